// Sums between volts, amps, amp-hours, watts and watt-hours, and the watt-hours of a pack.

import { type Asked, optional, service } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { fromWall_Wh } from '../../src/charging/sources/load.ts'
import { type Level, socOf, startOf } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type Mass, massOf } from '../../src/charging/upkeep/mass.ts'
import { labelEnergy_Wh } from '../../src/charging/upkeep/transport.ts'
import { type Price, priceKind } from '../../src/language/kinds/price-kind.ts'
import { sessionPacksKind } from '../../src/language/kinds/session-kinds.ts'
import { plainKind } from '../../src/language/kinds/value-kind.ts'
import {
  anyStateKind,
  cellsKind,
  currentKind,
  durationKind,
  energyKind,
  massKind,
  packKind,
  powerKind,
  resistanceKind,
  targetKind,
  voltageKind,
} from '../../src/language/kinds/values.ts'
import { readCapacity, readCount, writeCapacity, writeCount } from '../../src/language/quantities/quantities.ts'
import type { StandingPack } from '../../src/language/things/standing.ts'
import { sumMissing } from '../shared/problems.words.ts'
import { type Flight, flightOn, type Known, type SumName, sumFrom } from './sums.ts'

/** Of what feeds chargers too: far more than what flies. */
const anyCapacityKind = plainKind('capacity', text => readCapacity(text, { max: 400 }), writeCapacity, [
  '690mAh',
  '100Ah',
])

/** Of charges in a year too. */
const manyKind = plainKind('count', text => readCount(text, { max: 1000 }), writeCount, ['6', '300'])

const takes = {
  pack: optional(packKind),
  count: optional(manyKind),
  packs: optional(sessionPacksKind),
  cells: optional(cellsKind),
  capacity: optional(anyCapacityKind),
  voltage: optional(voltageKind),
  current: optional(currentKind),
  power: optional(powerKind),
  energy: optional(energyKind),
  duration: optional(durationKind),
  resistance: optional(resistanceKind),
  from: optional(anyStateKind),
  to: optional(targetKind),
  price: optional(priceKind),
  mass: optional(massKind),
}

type AskedEnergy = Asked<typeof takes>

/** How much of a pack is meant, as shares of what it holds. */
interface Part {
  readonly from: number | undefined
  readonly to: number | undefined
  readonly energy_Wh: number
  readonly charge_Ah: number
}

/** What follows from what was given; the kind says by which sum. */
export interface EnergyFound extends Known {
  readonly kind: 'pack' | 'packs' | Flight['kind'] | 'wall' | 'charge' | SumName
  readonly rate_C?: number
  /** What stays in the pack, 0 to 1. */
  readonly leftSoc?: number
  /** How long a flight was. */
  readonly flown_s?: number
  readonly part?: Part | undefined
  /** What a full charge, or that part of one, takes from a wall socket, in Wh, and what that costs. */
  readonly wall_Wh?: number
  readonly cost?: Price | undefined
  /** About what it weighs, where nobody said. */
  readonly mass?: Mass | undefined
  /** By the mass that was told of one. */
  readonly density_Whkg?: number | undefined
}

const fullOf_V = ({ chemistry, series }: Pack): number => chemistry.full_V.value * series

/** By the pack where there is one, else by two quantities that give a third. Throws a Problem where they give none. */
function found(asked: AskedEnergy, { house }: Context): EnergyFound {
  const { pack, count = 1, packs, current: current_A, price, mass: mass_kg } = asked
  const atWall = (energy_Wh: number) => {
    const wall_Wh = fromWall_Wh(energy_Wh)
    return { wall_Wh, cost: price && { ...price, amount: (price.amount * wall_Wh) / 1000 } }
  }
  const sag = asked.resistance === undefined ? undefined : sumOf(asked)
  if (sag) return sag
  if (packs) {
    const sum = (of: (item: StandingPack) => number) => packs.reduce((all, one) => all + one.count * of(one.item), 0)
    const power_W = sum(one => (one.current_A ?? current_A ?? 0) * fullOf_V(one.pack))
    const energy_Wh = sum(one => labelEnergy_Wh(one.pack))
    return { kind: 'packs', energy_Wh, power_W: power_W || undefined, ...atWall(energy_Wh) }
  }
  if (pack) {
    const socAt = (level: Level) => socOf(startOf(level, pack.chemistry, house), pack.chemistry)
    const load = flightOn(pack, asked, socAt)
    if (load) return load
    const energy_Wh = labelEnergy_Wh(pack) * count
    const part = partOf(asked, { energy_Wh, charge_Ah: pack.capacity_Ah * count }, socAt)
    return {
      kind: 'pack',
      energy_Wh,
      part,
      ...atWall(part?.energy_Wh ?? energy_Wh),
      mass: mass_kg === undefined ? massOf(pack, count) : undefined,
      density_Whkg: mass_kg && labelEnergy_Wh(pack) / mass_kg,
    }
  }
  return sumOf(asked) ?? alone(asked, atWall)
}

/** Where a charge to full ends, within what a curve tells. */
const fullSoc = 0.99

function partOf(
  { from, to }: AskedEnergy,
  whole: Pick<Part, 'energy_Wh' | 'charge_Ah'>,
  socAt: (level: Level) => number,
): Part | undefined {
  const ends = { from: from && socAt(from), to: to && socAt(to) }
  if (ends.from === undefined && (ends.to ?? 1) > fullSoc) return undefined
  const share = Math.abs((ends.to ?? 1) - (ends.from ?? 0))
  return { ...ends, energy_Wh: whole.energy_Wh * share, charge_Ah: whole.charge_Ah * share }
}

function sumOf({ cells, voltage, capacity, current, power, energy, duration, resistance }: AskedEnergy) {
  const { series = 0, chemistry } = cells ?? {}
  // A charge takes most from its charger where the pack is nearly full; what a pack holds goes by its label.
  const isOfLabel = capacity !== undefined || energy !== undefined
  const perCell_V = (isOfLabel ? chemistry?.nominal_V : chemistry?.full_V)?.value ?? 0
  return sumFrom({
    voltage_V: voltage ?? (resistance === undefined ? series * perCell_V : undefined),
    capacity_Ah: capacity,
    energy_Wh: energy,
    current_A: current,
    power_W: power,
    duration_s: duration,
    resistance_ohm: resistance,
  })
}

/** One quantity says the same in other units, or at the wall. */
function alone({ capacity, energy }: AskedEnergy, atWall: (energy_Wh: number) => Partial<EnergyFound>): EnergyFound {
  if (capacity !== undefined) return { kind: 'charge', capacity_Ah: capacity }
  if (energy !== undefined) return { kind: 'wall', energy_Wh: energy, ...atWall(energy) }
  throw sumMissing()
}

export const energy = service({
  name: 'energy',
  shelf: 'charge energy',
  takes,
  alone: ({ pack, packs, count, cells, ...quantities }) =>
    (pack ?? packs ?? count ?? (quantities.resistance ? undefined : cells)) === undefined &&
    Object.keys(quantities).length === 2 &&
    // Volts for some weeks are where a pack is left.
    !(quantities.voltage && quantities.duration),
  anyOf: [['pack', 'packs', 'capacity', 'voltage', 'cells', 'energy', 'current', 'power']],
  examples: [
    'energy pack: 6S 5000 LiPo',
    'energy packs: 2x 6S 1300 LiPo; 3x 3S 2200 LiPo',
    'energy packs: 6S 1300 LiPo at 1.3A; 4S 1500 LiPo at 1.5A',
    'energy capacity: 2200mAh voltage: 11.1V',
    'energy voltage: 20V current: 5A',
    'energy cells: 6S LiPo current: 5A',
    'energy current: 3A duration: 10min',
    'energy pack: 4S 1500 LiPo capacity: 1100mAh duration: 5min',
    'energy pack: 4S 2200 LiPo from: 20% to: 80% price: 30 cents/kWh',
  ],
  run: found,
  figures: sum => [
    figure.energy('energy', sum.energy_Wh),
    figure.capacity('capacity', sum.capacity_Ah),
    figure.power('power', sum.power_W),
    figure.current('current', sum.current_A),
    figure.voltage('voltage', sum.voltage_V),
    figure.duration('duration', sum.duration_s),
    figure.rate('cRate', sum.rate_C),
    figure.capacity('partCharge', sum.part?.charge_Ah),
    figure.energy('partEnergy', sum.part?.energy_Wh),
    figure.energy('wallEnergy', sum.wall_Wh),
    figure.density('energyPerMass', sum.density_Whkg),
    sum.mass &&
      figure.mass('mass', ((sum.mass.low_kg + sum.mass.high_kg) / 2) * 1000, {
        low: sum.mass.low_kg * 1000,
        high: sum.mass.high_kg * 1000,
      }),
  ],
})
