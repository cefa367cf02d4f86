// A battery seen as a source: its resting voltage against charge, its resistance, and the floors to stop at.

import { likelyClasses, typicalResistance } from './cell-class.ts'
import { diffusion_ohmAh, integrateCurve, interpolate, restingVoltage } from './curve.ts'
import type { HouseLimits } from './house-limits.ts'
import {
  leadAcidLimitsOf,
  leadAcidResistance_ohmAh,
  leadAcidRest,
  outletWiring_ohm,
  starterBlocks,
  starterCapacity_Ah,
  usualRest_V,
} from './lead-acid.ts'
import type { Pack } from './pack.ts'
import type { VehicleOutlet } from './source.ts'

export interface BatteryStore {
  readonly capacity_Ah: number
  /** Of the battery and the leads behind which it is met. */
  readonly resistance_ohm: number
  /** The part of it that lies in those leads; 0 where the load hangs on the battery itself. */
  readonly leads_ohm: number
  /** State of charge, 0 to 1. */
  readonly soc: number
  /** Drain ends where the volts at the battery's own plugs come down to this under load. */
  readonly loadFloor_V: number
  /** Drain ends where the voltage at rest would come down to this, in V. */
  readonly restFloor_V: number
  rest_V(soc: number): number
  /** Energy at the resting voltage between two states of charge, in Wh. */
  energyBetween_Wh(from: number, to: number): number
}

/** Floor under load of a battery source, whole pack, in V: the chemistry's or the house's, whichever is higher. */
export function sourceFloor_V(pack: Pack, limits: HouseLimits): number {
  const chemistry = pack.chemistry
  const perCell_V = Math.max(chemistry.loadFloor_V.value, limits.sourceFloorPerCell_V?.[chemistry.name] ?? 0)
  return perCell_V * pack.series
}

/** Floor at rest of the same: where a pilot lands, and never below the floor under load, in V. */
export const sourceRestFloor_V = (pack: Pack, limits: HouseLimits): number =>
  Math.max(pack.chemistry.restFloor_V.value * pack.series, sourceFloor_V(pack, limits))

/** A lithium pack at 25 °C; its resistances are added up, which is what a load of many minutes sees. */
export function batteryStore(pack: Pack, limits: HouseLimits, soc: number): BatteryStore {
  const chemistry = pack.chemistry
  const { atOnce_ohmAh, diffusion_h } = typicalResistance(likelyClasses(chemistry.classes.value, pack))
  const series_ohm = pack.cellResistance_ohm ?? atOnce_ohmAh / pack.capacity_Ah
  const diffusion_ohm = diffusion_ohmAh(chemistry, diffusion_h) / pack.capacity_Ah
  return {
    capacity_Ah: pack.capacity_Ah,
    resistance_ohm: pack.series * (series_ohm + diffusion_ohm),
    leads_ohm: 0,
    soc,
    loadFloor_V: sourceFloor_V(pack, limits),
    restFloor_V: sourceRestFloor_V(pack, limits),
    rest_V: at => pack.series * restingVoltage(chemistry, at),
    energyBetween_Wh: (from, to) => pack.series * pack.capacity_Ah * integrateCurve(chemistry.curve.value, from, to),
  }
}

/**
 * The lead-acid battery of a vehicle whose engine is off: one of 12 V, or two in series. What was measured stands
 * above a state of charge that was told, and that above what is usual. Its share of the label is a floor at rest.
 */
export function starterStore(outlet: VehicleOutlet, toldSoc?: number): BatteryStore {
  const { rest_V, capacity_Ah = starterCapacity_Ah.value, battery = 'starter' } = outlet
  const { share, restFloor_V, loadFloor_V } = leadAcidLimitsOf(outlet)
  const curve = leadAcidRest.value
  const held = (value: number) => Math.min(1, Math.max(0, value))
  const blocks = starterBlocks(outlet)
  const restAt_V = (at: number) => blocks * interpolate(curve.soc, curve.perCell_V, held(at))
  const socOf = (block_V: number) => held(interpolate(curve.perCell_V, curve.soc, block_V))
  const soc = rest_V === undefined ? (toldSoc ?? socOf(usualRest_V[battery].value)) : socOf(rest_V / blocks)
  return {
    capacity_Ah,
    resistance_ohm: blocks * (leadAcidResistance_ohmAh.value / capacity_Ah + outletWiring_ohm.value),
    leads_ohm: blocks * outletWiring_ohm.value,
    soc,
    loadFloor_V: blocks * loadFloor_V.value,
    restFloor_V: Math.max(blocks * restFloor_V.value, restAt_V(soc - share.value)),
    rest_V: restAt_V,
    energyBetween_Wh: (from, to) => blocks * capacity_Ah * integrateCurve(curve, from, to),
  }
}
