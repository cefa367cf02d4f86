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
export type Sum =
  | { readonly kind: 'pack'; readonly each_Wh: number; readonly count: number; readonly energy_Wh: number }
  | { readonly kind: 'energy'; readonly capacity_Ah: number; readonly voltage_V: number; readonly energy_Wh: number }
  | { readonly kind: 'capacity'; readonly capacity_Ah: number; readonly voltage_V: number; readonly energy_Wh: number }
  | { readonly kind: 'power'; readonly current_A: number; readonly voltage_V: number; readonly power_W: number }
  | { readonly kind: 'current'; readonly current_A: number; readonly voltage_V: number; readonly power_W: number }

/** By the pack where there is one, else by two quantities that give a third. Throws a Problem where they give none. */
function sumOf(asked: Asked<typeof takes>): Sum {
  const { pack, count = 1, capacity, voltage, current, power, energy } = asked
  if (pack) {
    const each_Wh = labelEnergy_Wh(pack)
    return { kind: 'pack', each_Wh, count, energy_Wh: each_Wh * count }
  }
  if (voltage === undefined || voltage === 0) throw sumMissing()
  if (capacity !== undefined)
    return { kind: 'energy', capacity_Ah: capacity, voltage_V: voltage, energy_Wh: capacity * voltage }
  if (energy !== undefined)
    return { kind: 'capacity', capacity_Ah: energy / voltage, voltage_V: voltage, energy_Wh: energy }
  if (current !== undefined)
    return { kind: 'power', current_A: current, voltage_V: voltage, power_W: current * voltage }
  if (power !== undefined) return { kind: 'current', current_A: power / voltage, voltage_V: voltage, power_W: power }
  throw sumMissing()
}

export const energy = service({
  name: 'energy',
  takes,
  examples: ['energy pack: 6S 5000 LiPo', 'energy capacity: 2200mAh voltage: 11.1V', 'energy voltage: 20V current: 5A'],
  run: asked => sumOf(asked),
  figures: sum => [
    'energy_Wh' in sum ? figure.energy('energy', sum.energy_Wh) : undefined,
    'capacity_Ah' in sum ? figure.capacity('capacity', sum.capacity_Ah) : undefined,
    'power_W' in sum ? figure.power('power', sum.power_W) : undefined,
    'current_A' in sum ? figure.current('current', sum.current_A) : undefined,
  ],
})
