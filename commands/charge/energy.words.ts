// What is said of a sum.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { energy } from './energy.ts'

export const energyWords: WordsOf<typeof energy> = ({ say, show }) => ({
  summary: say`Watt-hours of a pack, and sums between volts, amps, amp-hours and watts.`,
  takes: {
    pack: { about: say`the pack whose watt-hours are wanted`, as: text => text },
    count: { about: say`how many such packs`, as: text => say`${text} of them` },
    capacity: { about: say`mAh or Ah` },
    voltage: { about: say`volts` },
    current: { about: say`amps` },
    power: { about: say`watts` },
    energy: { about: say`watt-hours` },
  },
  answer: (sum, { pack }) => {
    switch (sum.kind) {
      case 'pack':
        return [
          sum.count > 1
            ? say`${show.number(sum.count, 0)} packs hold ${show.energy(sum.energy_Wh)}, ${show.energy(sum.each_Wh)} each.`
            : say`It holds ${show.energy(sum.energy_Wh)}: ${show.perCell(pack?.chemistry.nominal_V.value ?? 0)} × ${show.number(pack?.series ?? 1, 0)} × ${show.capacity(pack?.capacity_Ah ?? 0)}.`,
        ]
      case 'energy':
        return [
          say`${show.capacity(sum.capacity_Ah)} × ${show.voltage(sum.voltage_V)} = ${show.energy(sum.energy_Wh)}.`,
        ]
      case 'capacity':
        return [
          say`${show.energy(sum.energy_Wh)} ÷ ${show.voltage(sum.voltage_V)} = ${show.capacity(sum.capacity_Ah)}.`,
        ]
      case 'power':
        return [say`${show.voltage(sum.voltage_V)} × ${show.current(sum.current_A)} = ${show.power(sum.power_W)}.`]
      case 'current':
        return [say`${show.power(sum.power_W)} ÷ ${show.voltage(sum.voltage_V)} = ${show.current(sum.current_A)}.`]
    }
  },
  figures: { energy: say`energy`, capacity: say`capacity`, power: say`power`, current: say`current` },
})
