// Sums between volts, amps, amp-hours, watts and watt-hours, and the watt-hours of a pack.

import { type Asked, optional, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import {
  capacityKind,
  countKind,
  currentKind,
  energyKind,
  packKind,
  powerKind,
  voltageKind,
} from '../../src/language/kinds/values.ts'
import { sumMissing } from './problems.words.ts'

const takes = {
  pack: optional(packKind),
  count: optional(countKind),
  capacity: optional(capacityKind),
  voltage: optional(voltageKind),
  current: optional(currentKind),
  power: optional(powerKind),
  energy: optional(energyKind),
}

/** What follows from what was given; the kind says by which sum. */
export interface Sum {
  readonly kind: 'pack' | 'energy' | 'capacity' | 'power' | 'current'
  readonly voltage_V: number
  readonly capacity_Ah?: number
  readonly energy_Wh?: number
  readonly current_A?: number
  readonly power_W?: number
}

/** By the pack where there is one, else by two quantities that give a third. Throws a Problem where they give none. */
function sumOf({
  pack,
  count = 1,
  voltage: voltage_V = 0,
  capacity,
  current,
  power,
  energy,
}: Asked<typeof takes>): Sum {
  if (pack) return { kind: 'pack', voltage_V, energy_Wh: labelEnergy_Wh(pack) * count }
  if (voltage_V === 0) throw sumMissing()
  if (capacity !== undefined)
    return { kind: 'energy', voltage_V, capacity_Ah: capacity, energy_Wh: capacity * voltage_V }
  if (energy !== undefined) return { kind: 'capacity', voltage_V, capacity_Ah: energy / voltage_V, energy_Wh: energy }
  if (current !== undefined) return { kind: 'power', voltage_V, current_A: current, power_W: current * voltage_V }
  if (power !== undefined) return { kind: 'current', voltage_V, current_A: power / voltage_V, power_W: power }
  throw sumMissing()
}

export const energy = service({
  name: 'energy',
  takes,
  examples: ['energy pack: 6S 5000 LiPo', 'energy capacity: 2200mAh voltage: 11.1V', 'energy voltage: 20V current: 5A'],
  run: asked => sumOf(asked),
  figures: sum => [
    figure.energy('energy', sum.energy_Wh),
    figure.capacity('capacity', sum.capacity_Ah),
    figure.power('power', sum.power_W),
    figure.current('current', sum.current_A),
  ],
})
