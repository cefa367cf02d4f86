// Packs side by side: energy, mass, energy for its mass, and the current of each at one C-rate.

import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import type { Figure } from '../../src/assistant/reply.ts'
import { compareCautions } from '../../src/cautions/compare.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import { bagKind } from '../../src/language/kinds/bag-kind.ts'
import { packKind, rateKind } from '../../src/language/kinds/values.ts'
import type { WeighedPack } from '../../src/language/things/weighed.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'

interface Entry {
  readonly name: string
  readonly pack: Pack
  readonly energy_Wh: number
  readonly current_A: number
  readonly mass_kg?: number
}

interface Weighed extends Entry {
  readonly mass_kg: number
}

const ounce_kg = 0.028349523125

export const compare = defineCommand({
  name: 'compare',
  summary: 'Packs side by side by watt-hours, mass, Wh per kg and current at one C-rate.',
  options: {
    packs: required(bagKind, {
      description: 'two or more packs with ";" between them, each with its mass behind it',
      phrase: text => text,
    }),
    rate: optional(rateKind, {
      description: 'the C-rate to compare currents at; 1C when not said',
      phrase: text => `at ${text}`,
    }),
  },
  examples: [
    'compare packs: 3S 720 LiHV 45g; 3S 850 LiPo 68g',
    'compare packs: 4S 1500 LiPo 178g; 4S 1550 LiHV 172g; 4S 3000 Li-ion 205g rate: 2C',
  ],
  plainWords: ['compare', 'side by side', 'vs', 'versus', 'which is lighter', 'heavier'],
  meantBy: [['pack', 'mass']],
  answer: ({ packs, rate = 1 }, { show }) => {
    if (packs.length < 2) {
      throw new Problem({
        what: 'That is one pack; I need two or more to compare.',
        expected: 'two or more packs with ";" between them',
        example: 'compare packs: 3S 720 LiHV 45g; 3S 850 LiPo 68g',
      })
    }
    const entries = packs.map(({ item }) => entryOf(item, rate))
    return {
      headline: headline(entries, show),
      figures: entries.flatMap((entry, index) => figuresOf(entry, index + 1, rate, show)),
      working: [
        ...entries.map(entry => line(entry, show)),
        ...ounces(entries, show),
        'Nominal volts and capacity are those of the label (common practice); what a pack gives in flight is less at high current, in the cold and with age.',
      ],
      cautions: compareCautions,
      followUps: entries
        .slice(0, 3)
        .map(({ pack, name }) => followUp(`Set for ${name}`, 'current', { pack: packKind.write(pack) })),
    }
  },
})

function entryOf({ pack, mass_kg }: WeighedPack, rate_C: number): Entry {
  return {
    name: packKind.write(pack),
    pack,
    energy_Wh: labelEnergy_Wh(pack),
    current_A: pack.capacity_Ah * rate_C,
    ...(mass_kg === undefined ? {} : { mass_kg }),
  }
}

const isWeighed = (entry: Entry): entry is Weighed => entry.mass_kg !== undefined
const perKilogram = ({ energy_Wh, mass_kg }: Weighed): number => energy_Wh / mass_kg

function headline(entries: readonly Entry[], show: Show): string {
  const most = entries.reduce((best, entry) => (entry.energy_Wh > best.energy_Wh ? entry : best))
  const energy = `${most.name} holds most, ${show.energy(most.energy_Wh)}.`
  const weighed = entries.filter(isWeighed)
  if (weighed.length < 2)
    return `${energy} With the mass of each (as in "45g" behind the pack) I can say what it buys.`
  const densest = weighed.reduce((best, entry) => (perKilogram(entry) > perKilogram(best) ? entry : best))
  const density = `${show.number(perKilogram(densest), 0)} Wh per kg`
  return densest.name === most.name
    ? `${most.name} holds most, ${show.energy(most.energy_Wh)}, and most for its mass, ${density}.`
    : `${energy} ${densest.name} holds most for its mass, ${density}.`
}

function figuresOf(entry: Entry, number: number, rate_C: number, show: Show): Figure[] {
  const figure = figuresIn(show)
  const figures = [
    figure.energy(`energy${number}`, `${entry.name}: energy`, entry.energy_Wh),
    figure.current(`current${number}`, `${entry.name}: current at ${show.rate(rate_C)}`, entry.current_A),
  ]
  if (!isWeighed(entry)) return figures
  const grams = entry.mass_kg * 1000
  return [
    ...figures,
    {
      key: `mass${number}`,
      label: `${entry.name}: mass`,
      value: grams,
      unit: 'g',
      text: `${show.number(grams, 0)} g`,
    },
    {
      key: `energyPerMass${number}`,
      label: `${entry.name}: energy for its mass`,
      value: perKilogram(entry),
      unit: 'Wh/kg',
      text: `${show.number(perKilogram(entry), 0)} Wh/kg`,
    },
  ]
}

function line(entry: Entry, show: Show): string {
  const { pack } = entry
  const nominal_V = pack.chemistry.nominal_V.value
  const energy = `${entry.name}: ${show.perCell(nominal_V)} × ${pack.series} × ${show.capacity(pack.capacity_Ah)} = ${show.energy(entry.energy_Wh)}`
  return isWeighed(entry)
    ? `${energy}; ÷ ${show.number(entry.mass_kg, 3)} kg = ${show.number(perKilogram(entry), 0)} Wh/kg.`
    : `${energy}.`
}

/** From each pack to the next heavier: what another ounce buys. */
function ounces(entries: readonly Entry[], show: Show): string[] {
  const byMass = entries.filter(isWeighed).toSorted((a, b) => a.mass_kg - b.mass_kg)
  return byMass.slice(1).flatMap((heavier, index) => {
    const lighter = byMass[index] as Weighed
    const more_oz = (heavier.mass_kg - lighter.mass_kg) / ounce_kg
    if (more_oz < 0.05) return []
    const gain_Wh = heavier.energy_Wh - lighter.energy_Wh
    const from = `${lighter.name} to ${heavier.name}: ${show.number(more_oz, 1)} oz (${show.number((heavier.mass_kg - lighter.mass_kg) * 1000, 0)} g) more`
    return gain_Wh > 0
      ? [`${from} for ${show.energy(gain_Wh)} more, ${show.number(gain_Wh / more_oz, 2)} Wh an ounce.`]
      : [`${from} and ${show.energy(-gain_Wh)} less.`]
  })
}
