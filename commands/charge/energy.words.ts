// What is said of a sum.

import type { Asked, WordsOf } from '../../src/assistant/command.ts'
import { mostUsed } from '../../src/charging/upkeep/flight-meter.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { EnergyFound, energy } from './energy.ts'

export const energyWords: WordsOf<typeof energy> = ({ say, show, own }) => ({
  summary: say`Watt-hours and weight of a pack, and sums between volts, amps, amp-hours and watts.`,
  asks: [own('how many watt hours has a 6S 5000 LiPo'), own('how many watt hours are 2200 mAh at 11.1 V')],
  takes: {
    pack: { about: say`the pack whose watt-hours are wanted`, as: text => text },
    count: { about: say`how many such packs`, as: text => say`${text} of them` },
    packs: {
      about: say`several kinds of packs, with ";" between them, and "at 1.3A" behind one for the watts of its charge`,
      as: text => text,
    },
    cells: { about: say`how many cells in series, of which type`, as: text => text },
    capacity: { about: say`mAh or Ah` },
    voltage: { about: say`volts` },
    current: { about: say`amps` },
    power: { about: say`watts` },
    energy: { about: say`watt-hours` },
    duration: { about: say`how long`, as: text => say`for ${text}` },
    resistance: { about: say`of a pack, a cell or a lead` },
    from: { about: say`where the pack stands`, as: text => say`from ${text}` },
    to: { about: say`where it is to go`, as: text => say`to ${text}` },
    price: { about: say`what a kWh costs`, as: text => say`at ${text}` },
    mass: { about: say`what one pack weighs`, as: text => say`of ${text}` },
  },
  answer: (found, asked) => answerLines(found, asked, { say, show, own }),
  figures: {
    energy: say`energy`,
    capacity: say`capacity`,
    power: say`power`,
    current: say`current`,
    voltage: say`volts`,
    duration: say`time`,
    cRate: say`C rate`,
    partCharge: say`of that`,
    partEnergy: say`of that`,
    wallEnergy: say`from the wall`,
    energyPerMass: say`energy for its mass`,
    mass: say`weight, about`,
  },
})

/** Fewer volts are what something loses. */
const leastSupply_V = 2.5

/** With fewer amps little is flown and much is charged. */
const leastFlown_A = 6

type Told = Asked<(typeof energy)['takes']>
type Speaking = Pick<Locale, 'say' | 'show' | 'own'>

function answerLines(found: EnergyFound, asked: Told, speaking: Speaking): readonly (Text | undefined)[] {
  const { say, show } = speaking
  const { pack, count = 1 } = asked
  const [amps, watts] = [show.current(found.current_A ?? 0), show.power(found.power_W ?? 0)]
  switch (found.kind) {
    case 'pack':
      return packWords(found, asked, speaking)
    case 'wall':
      return [wallWords(found, speaking)]
    case 'packs':
      return [
        found.power_W ? say`Charged at once they take ${watts} at the end.` : undefined,
        say`All together hold ${show.energy(found.energy_Wh ?? 0)}.`,
        found.cost && wallWords(found, speaking),
      ]
    case 'rate':
      return [
        say`${amps} into ${show.capacity(pack?.capacity_Ah ?? 0)} is ${show.rate(found.rate_C ?? 0)}.`,
        count > 1
          ? say`At the end of the charge that is ${show.power((found.power_W ?? 0) / count)} each, ${watts} for all ${show.number(count, 0)}.`
          : say`At the end of the charge that is ${watts}.`,
      ]
    case 'flight':
      return [
        say`${amps} out of ${show.capacity(pack?.capacity_Ah ?? 0)} is ${show.rate(found.rate_C ?? 0)}: about ${minutesOf(found, speaking)} to ${show.percent(found.leftSoc ?? 0)}.`,
        asked.power === undefined ? undefined : say`${watts} is ${amps} at the volts on the label.`,
        say`Averages of your own flights tell more: land when the charger puts back four fifths at most.`,
      ]
    case 'flown':
      return flownWords(found, pack, speaking)
    case 'charge':
      return [
        say`${show.number((found.capacity_Ah ?? 0) * 1000, 0)} mAh are ${show.number(found.capacity_Ah ?? 0, 3)} Ah: a thousand to one. For watt-hours tell me the volts too.`,
      ]
    default:
      return sumWords(found, asked, speaking)
  }
}

/** What was used on average, and how long that may go on. */
function flownWords(found: EnergyFound, pack: Told['pack'], speaking: Speaking): readonly Text[] {
  const { say, show } = speaking
  const { capacity_Ah = 0, flown_s = 0, duration_s = 0, current_A = 0, rate_C = 0, leftSoc = 0 } = found
  const label_Ah = pack?.capacity_Ah ?? 1
  const minutes = minutesOf({ ...found, duration_s: flown_s }, speaking)
  const perMinute = say`${show.number((capacity_Ah * 1000 * 60) / flown_s, 0)} mAh a minute`
  return [
    say`${show.capacity(capacity_Ah)} in ${minutes} is ${show.current(current_A)} on average (${show.power(found.power_W ?? 0)} at the volts on the label), ${perMinute}: ${show.percent(capacity_Ah / label_Ah)} of the label, at ${show.rate(rate_C)}.`,
    say`To ${show.percent(leftSoc)} that allows ${minutesOf({ ...found, duration_s }, speaking)}.`,
  ]
}

function packWords(found: EnergyFound, { pack, count = 1 }: Told, speaking: Speaking): readonly (Text | undefined)[] {
  const { say, show } = speaking
  const { energy_Wh = 0, part, mass, density_Whkg } = found
  const energy = show.energy(energy_Wh)
  // No guess is good for more than two digits.
  const grams = (mass_kg: number) => say`${show.number(Number((mass_kg * 1000).toPrecision(2)), 0)} g`
  const range = mass && say`about ${grams(mass.low_kg)} to ${grams(mass.high_kg)}`
  const wall = wallWords(found, speaking)
  return [
    found.cost && wall,
    density_Whkg === undefined ? undefined : say`For its mass that is ${show.number(density_Whkg, 0)} Wh a kilogram.`,
    part && partWords(part, energy_Wh, speaking),
    count > 1
      ? say`${show.number(count, 0)} packs hold ${energy}, ${show.energy(energy_Wh / count)} each.`
      : say`It holds ${energy}: ${show.perCell(pack?.chemistry.nominal_V.value ?? 0)} × ${show.number(pack?.series ?? 1, 0)} × ${show.capacity(pack?.capacity_Ah ?? 0)}.`,
    range && (count > 1 ? say`They weigh ${range}.` : say`It weighs ${range}.`),
    found.cost ? undefined : wall,
  ]
}

function partWords(
  { from, to, energy_Wh, charge_Ah }: NonNullable<EnergyFound['part']>,
  whole_Wh: number,
  { say, show }: Speaking,
): Text {
  const part = say`${show.capacity(charge_Ah)}, ${show.energy(energy_Wh)}`
  if (from !== undefined && to !== undefined) return say`From ${show.percent(from)} to ${show.percent(to)} are ${part}.`
  if (from === undefined) return say`At ${show.percent(to ?? 1)} it holds ${part}.`
  return say`At ${show.percent(from)} it holds ${show.energy(from * whole_Wh)}; to full are ${part}.`
}

/** What it takes from the wall, and what that costs where a price was told. */
function wallWords({ energy_Wh = 0, part, wall_Wh = 0, cost }: EnergyFound, { say, show, own }: Speaking): Text {
  const into = show.energy(part?.energy_Wh ?? energy_Wh)
  const wall = say`About ${show.energy(Math.round(wall_Wh))} from the wall for ${into} into the packs: charger and supply lose about a quarter.`
  if (!cost) return wall
  const amount = show.number(Number(cost.amount.toPrecision(2)), 5)
  return say`That costs about ${cost.money === '' ? amount : own(`${amount} ${cost.money}`)}. ${wall}`
}

const minutesOf = ({ duration_s = 0 }: EnergyFound, { say, show }: Pick<Speaking, 'say' | 'show'>): Text =>
  duration_s < 3600 ? say`${show.number(duration_s / 60, 1)} min` : show.roughly(duration_s)

/** The sum with its two quantities, and what is worth knowing beside it. */
function sumWords(found: EnergyFound, { cells, pack }: Told, { say, show }: Speaking): readonly (Text | undefined)[] {
  const { voltage_V = 0, duration_s = 0, resistance_ohm = 0 } = found
  const [volts, amps, watts] = [
    show.voltage(voltage_V),
    show.current(found.current_A ?? 0),
    show.power(found.power_W ?? 0),
  ]
  const [charge, energy] = [show.capacity(found.capacity_Ah ?? 0), show.energy(found.energy_Wh ?? 0)]
  const minutes = minutesOf(found, { say, show })
  const series = (cells ?? pack)?.series ?? 1
  switch (found.kind) {
    case 'energy':
      return [say`${charge} × ${volts} = ${energy}.`]
    case 'capacity':
      return [say`${energy} ÷ ${volts} = ${charge}.`]
    case 'power':
      return [
        say`${volts} × ${amps} = ${watts}.`,
        voltage_V < leastSupply_V
          ? say`As a drop it is ${show.resistance(voltage_V / (found.current_A ?? 1))}.`
          : undefined,
        cells &&
          say`That is what the charge takes when the pack is nearly full; the charger itself draws a fifth more.`,
      ]
    case 'current':
      return [say`${watts} ÷ ${volts} = ${amps}.`]
    case 'moved':
      return [
        say`${amps} for ${minutes} is ${charge}.`,
        (found.current_A ?? 0) < leastFlown_A
          ? undefined
          : say`To fly so and land with a fifth left takes a pack of ${show.capacity((found.capacity_Ah ?? 0) / mostUsed.value)}.`,
      ]
    case 'lasts':
      return [
        say`${charge} at ${amps} lasts ${minutes}; landed with a fifth left ${show.number((duration_s * mostUsed.value) / 60, 1)} min.`,
      ]
    case 'drawn':
      return [
        say`${charge} in ${minutes} is ${amps} on average, ${show.number(((found.capacity_Ah ?? 0) * 60_000) / duration_s, 0)} mAh a minute.`,
      ]
    case 'runs':
      return [say`${energy} at ${watts} last ${minutes}, without what is lost on the way.`]
    case 'work':
      return [say`${watts} for ${minutes} is ${energy}.`]
    default:
      return [
        say`${show.resistance(resistance_ohm)} × ${amps} is a sag of ${volts}, and ${watts} of heat.`,
        series > 1
          ? say`Is that of each cell, ${show.number(series, 0)} cells sag ${show.voltage(voltage_V * series)} and make ${show.power((found.power_W ?? 0) * series)}.`
          : undefined,
      ]
  }
}
