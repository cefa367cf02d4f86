// What is said of a sum.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { energy } from './energy.ts'

export const energyWords: WordsOf<typeof energy> = ({ say, show, own }) => ({
  summary: say`Watt-hours and weight of a pack, and sums between volts, amps, amp-hours and watts.`,
  asks: [own('how many watt hours has a 6S 5000 LiPo')],
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
  },
  answer: (
    { kind, voltage_V = 0, capacity_Ah = 0, energy_Wh = 0, current_A = 0, power_W = 0, rate_C = 0, wall_Wh = 0, mass },
    { pack, cells, count = 1 },
  ) => {
    const [volts, charge, energy] = [show.voltage(voltage_V), show.capacity(capacity_Ah), show.energy(energy_Wh)]
    // No guess is good for more than two digits.
    const grams = (mass_kg: number) => say`${show.number(Number((mass_kg * 1000).toPrecision(2)), 0)} g`
    const [amps, watts] = [show.current(current_A), show.power(power_W)]
    switch (kind) {
      case 'pack':
        return [
          count > 1
            ? say`${show.number(count, 0)} packs hold ${energy}, ${show.energy(energy_Wh / count)} each.`
            : say`It holds ${energy}: ${show.perCell(pack?.chemistry.nominal_V.value ?? 0)} × ${show.number(pack?.series ?? 1, 0)} × ${show.capacity(pack?.capacity_Ah ?? 0)}.`,
          mass &&
            say`${count > 1 ? say`They weigh` : say`It weighs`} about ${grams(mass.low_kg)} to ${grams(mass.high_kg)}; a full charge takes about ${show.energy(Math.round(wall_Wh))} from the wall.`,
        ]
      case 'wall':
        return [
          say`About ${show.energy(Math.round(wall_Wh))} from the wall for ${energy} into the packs: charger and supply lose about a quarter.`,
        ]
      case 'packs':
        return [
          power_W > 0 ? say`Charged at once they take ${watts} at the end.` : undefined,
          say`All together hold ${energy}.`,
        ]
      case 'rate':
        return [
          say`${amps} into ${show.capacity(pack?.capacity_Ah ?? 0)} is ${show.rate(rate_C)}.`,
          count > 1
            ? say`At the end of the charge that is ${show.power(power_W / count)} each, ${watts} for all ${show.number(count, 0)}.`
            : say`At the end of the charge that is ${watts}.`,
        ]
      case 'energy':
        return [say`${charge} × ${volts} = ${energy}.`]
      case 'charge':
        return [
          say`${show.number(capacity_Ah * 1000, 0)} mAh are ${show.number(capacity_Ah, 3)} Ah: a thousand to one. For watt-hours tell me the volts too.`,
        ]
      case 'capacity':
        return [say`${energy} ÷ ${volts} = ${charge}.`]
      case 'power':
        return [
          say`${volts} × ${amps} = ${watts}.`,
          cells &&
            say`That is what the charge takes when the pack is nearly full; the charger itself draws a fifth more.`,
        ]
      case 'current':
        return [say`${watts} ÷ ${volts} = ${amps}.`]
    }
  },
  figures: {
    energy: say`energy`,
    capacity: say`capacity`,
    power: say`power`,
    current: say`current`,
    cRate: say`C rate`,
    wallEnergy: say`from the wall for a full charge`,
    mass: say`weight, about`,
  },
})
