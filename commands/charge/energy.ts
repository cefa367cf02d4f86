// Sums between volts, amps, amp-hours, watts and watt-hours, and the watt-hours of a pack.

import { type Asked, optional, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { fromWall_Wh } from '../../src/charging/sources/load.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type Mass, massOf } from '../../src/charging/upkeep/mass.ts'
import { labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import { sessionPacksKind } from '../../src/language/kinds/session-kinds.ts'
import { plainKind } from '../../src/language/kinds/value-kind.ts'
import {
  cellsKind,
  countKind,
  currentKind,
  energyKind,
  packKind,
  powerKind,
  voltageKind,
} from '../../src/language/kinds/values.ts'
import { readCapacity, writeCapacity } from '../../src/language/quantities/quantities.ts'
import type { StandingPack } from '../../src/language/things/standing.ts'
import { sumMissing } from './problems.words.ts'

/** Of what feeds chargers too: far more than what flies. */
const anyCapacityKind = plainKind('capacity', text => readCapacity(text, { max: 400 }), writeCapacity, [
  '690mAh',
  '100Ah',
])

const takes = {
  pack: optional(packKind),
  count: optional(countKind),
  packs: optional(sessionPacksKind),
  cells: optional(cellsKind),
  capacity: optional(anyCapacityKind),
  voltage: optional(voltageKind),
  current: optional(currentKind),
  power: optional(powerKind),
  energy: optional(energyKind),
}

/** What follows from what was given; the kind says by which sum. */
export interface Sum {
  readonly kind: 'pack' | 'packs' | 'rate' | 'wall' | 'energy' | 'charge' | 'capacity' | 'power' | 'current'
  readonly voltage_V?: number
  readonly capacity_Ah?: number
  readonly energy_Wh?: number
  readonly current_A?: number
  readonly power_W?: number | undefined
  readonly rate_C?: number
  /** What a full charge takes from a wall socket, in Wh. */
  readonly wall_Wh?: number
  /** About what it weighs. */
  readonly mass?: Mass
}

const fullOf_V = ({ chemistry, series }: Pack): number => chemistry.full_V.value * series

/** By the pack where there is one, else by two quantities that give a third. Throws a Problem where they give none. */
function sumOf({
  pack,
  count = 1,
  packs,
  cells,
  voltage = 0,
  capacity,
  current,
  power,
  energy,
}: Asked<typeof takes>): Sum {
  if (packs) {
    const sum = (of: (item: StandingPack) => number) => packs.reduce((all, one) => all + one.count * of(one.item), 0)
    const power_W = sum(one => (one.current_A ?? current ?? 0) * fullOf_V(one.pack))
    const energy_Wh = sum(one => labelEnergy_Wh(one.pack))
    return { kind: 'packs', energy_Wh, power_W: power_W || undefined, wall_Wh: fromWall_Wh(energy_Wh) }
  }
  if (pack && current !== undefined) {
    const power_W = current * fullOf_V(pack) * count
    return { kind: 'rate', voltage_V: fullOf_V(pack), current_A: current, power_W, rate_C: current / pack.capacity_Ah }
  }
  if (pack) {
    const energy_Wh = labelEnergy_Wh(pack) * count
    return { kind: 'pack', voltage_V: voltage, energy_Wh, wall_Wh: fromWall_Wh(energy_Wh), mass: massOf(pack, count) }
  }
  const { series = 0, chemistry } = cells ?? {}
  const label_V = voltage || series * (chemistry?.nominal_V.value ?? 0)
  if (label_V === 0 && capacity !== undefined) return { kind: 'charge', capacity_Ah: capacity }
  if (label_V === 0 && energy !== undefined) return { kind: 'wall', energy_Wh: energy, wall_Wh: fromWall_Wh(energy) }
  if (label_V === 0) throw sumMissing()
  if (capacity !== undefined)
    return { kind: 'energy', voltage_V: label_V, capacity_Ah: capacity, energy_Wh: capacity * label_V }
  if (energy !== undefined)
    return { kind: 'capacity', voltage_V: label_V, capacity_Ah: energy / label_V, energy_Wh: energy }
  // A charge takes most from its charger where the pack is nearly full.
  const voltage_V = voltage || series * (chemistry?.full_V.value ?? 0)
  if (current !== undefined) return { kind: 'power', voltage_V, current_A: current, power_W: current * voltage_V }
  if (power !== undefined) return { kind: 'current', voltage_V, current_A: power / voltage_V, power_W: power }
  throw sumMissing()
}

export const energy = service({
  name: 'energy',
  takes,
  anyOf: [['pack', 'packs', 'capacity', 'voltage', 'cells', 'energy']],
  examples: [
    'energy pack: 6S 5000 LiPo',
    'energy packs: 2x 6S 1300 LiPo; 3x 3S 2200 LiPo',
    'energy packs: 6S 1300 LiPo at 1.3A; 4S 1500 LiPo at 1.5A',
    'energy capacity: 2200mAh voltage: 11.1V',
    'energy voltage: 20V current: 5A',
    'energy cells: 6S LiPo current: 5A',
  ],
  run: asked => sumOf(asked),
  figures: sum => [
    figure.energy('energy', sum.energy_Wh),
    figure.capacity('capacity', sum.capacity_Ah),
    figure.power('power', sum.power_W),
    figure.current('current', sum.current_A),
    figure.rate('cRate', sum.rate_C),
    figure.energy('wallEnergy', sum.wall_Wh),
    sum.mass &&
      figure.mass('mass', ((sum.mass.low_kg + sum.mass.high_kg) / 2) * 1000, {
        low: sum.mass.low_kg * 1000,
        high: sum.mass.high_kg * 1000,
      }),
  ],
})
