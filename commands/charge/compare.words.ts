// What is said of packs side by side.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { type compare, type Entry, isWeighed, perKilogram, type Step } from './compare.ts'

export const compareWords: WordsOf<typeof compare> = locale => {
  const { say, show, own } = locale
  const notASetting = say`A current at a C-rate is arithmetic here: neither what the pack may be charged with nor what it can give. Its label says both.`
  return {
    summary: say`Packs side by side by watt-hours, mass, Wh per kg and current at one C-rate.`,
    asks: [
      own('compare a 3S 720 LiHV of 45g with a 3S 850 LiPo of 68g'),
      own('which is lighter for its energy, a 4S 1500 LiPo of 180g or a 4S 1300 LiPo of 150g'),
    ],
    takes: {
      packs: { about: say`two or more packs with ";" between them, each with its mass behind it`, as: text => text },
      rate: { about: say`the C-rate to compare currents at; 1C when not said`, as: text => say`at ${text}` },
    },
    answer: ({ most, densest }, { rate }) => {
      const energy = show.energy(most.energy_Wh)
      const density = densest && show.number(perKilogram(densest), 0)
      return [
        !densest || !density
          ? say`${own(most.name)} holds most, ${energy}. With the mass of each (as in "${own('45g')}" behind the pack) I can say what it buys.`
          : densest.name === most.name
            ? say`${own(most.name)} holds most, ${energy}, and most for its mass, ${density} Wh per kg.`
            : say`${own(most.name)} holds most, ${energy}. ${own(densest.name)} holds most for its mass, ${density} Wh per kg.`,
        rate === undefined
          ? undefined
          : say`Charged at ${show.rate(rate)} they take about the same time, whatever their cells and mAh.`,
        rate === undefined ? undefined : notASetting,
      ]
    },
    figures: {
      energy: (of, { entries }) => say`${nameOf(entries, of, locale)}: energy`,
      current: (of, { entries, rate_C }) => say`${nameOf(entries, of, locale)}: current at ${show.rate(rate_C)}`,
      mass: (of, { entries }) => say`${nameOf(entries, of, locale)}: mass`,
      energyPerMass: (of, { entries }) => say`${nameOf(entries, of, locale)}: energy for its mass`,
    },
    working: ({ entries, ounces }, { rate }) => [
      ...entries.map(entry => line(entry, locale)),
      ...ounces.map(step => ounceLine(step, locale)),
      say`Nominal volts and capacity are those of the label (common practice); what a pack gives in flight is less at high current, in the cold and with age.`,
      rate === undefined ? notASetting : undefined,
    ],
    next: ({ entries }) =>
      entries
        .slice(0, 3)
        .map(({ pack, name }) => followUp(say`Set for ${own(name)}`, 'current', { pack: packKind.write(pack) })),
  }
}

const nameOf = (entries: readonly Entry[], of: number, { own }: Locale): Text => own(entries[of - 1]?.name ?? '')

function line(entry: Entry, { say, show, own }: Locale): Text {
  const { pack, name, energy_Wh } = entry
  const energy = say`${own(name)}: ${show.perCell(pack.chemistry.nominal_V.value)} × ${own(String(pack.series))} × ${show.capacity(pack.capacity_Ah)} = ${show.energy(energy_Wh)}`
  return isWeighed(entry)
    ? say`${energy}; ÷ ${show.number(entry.mass_kg, 3)} kg = ${show.number(perKilogram(entry), 0)} Wh/kg.`
    : say`${energy}.`
}

function ounceLine({ lighter, heavier, more_oz, more_kg, gain_Wh }: Step, { say, show, own }: Locale): Text {
  const from = say`${own(lighter.name)} to ${own(heavier.name)}: ${show.number(more_oz, 1)} oz (${show.number(more_kg * 1000, 0)} g) more`
  return gain_Wh > 0
    ? say`${from} for ${show.energy(gain_Wh)} more, ${show.number(gain_Wh / more_oz, 2)} Wh an ounce.`
    : say`${from} and ${show.energy(-gain_Wh)} less.`
}
