// A battery seen as a source: its resting voltage against charge, one resistance, and the floor to stop at.

import { integrateCurve, interpolate, restingVoltage } from './curve.ts'
import type { HouseLimits } from './house-limits.ts'
import {
  leadAcidRest,
  starterBlocks,
  starterCapacity_Ah,
  starterFloor_V,
  starterResistance_ohm,
  starterRest_V,
} from './lead-acid.ts'
import type { Pack } from './pack.ts'
import type { VehicleOutlet } from './source.ts'

export interface BatteryStore {
  readonly capacity_Ah: number
  readonly resistance_ohm: number
  /** State of charge, 0 to 1. */
  readonly soc: number
  /** Drain ends where the voltage under load comes down to this, in V. */
  readonly loadFloor_V: number
  /** Drain ends where the voltage at rest would come down to this, in V; 0 where only the load counts. */
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

/** A lithium pack at 25 °C; its resistances are added up, which is what a load of many minutes sees. */
export function batteryStore(pack: Pack, limits: HouseLimits, soc: number): BatteryStore {
  const chemistry = pack.chemistry
  const { series_ohmAh, fast_ohmAh, slow_ohmAh } = chemistry.resistance.value
  const series_ohm = pack.cellResistance_ohm ?? series_ohmAh / pack.capacity_Ah
  const diffusion_ohm = (fast_ohmAh + slow_ohmAh) / pack.capacity_Ah
  return {
    capacity_Ah: pack.capacity_Ah,
    resistance_ohm: pack.series * (series_ohm + diffusion_ohm),
    soc,
    loadFloor_V: sourceFloor_V(pack, limits),
    restFloor_V: 0,
    rest_V: at => pack.series * restingVoltage(chemistry, at),
    energyBetween_Wh: (from, to) =>
      pack.series * pack.capacity_Ah * integrateCurve(chemistry.curve.value, from, to),
  }
}

/** The lead-acid battery of a vehicle whose engine is off: one of 12 V, or two in series. */
export function starterStore(outlet: VehicleOutlet): BatteryStore {
  const { rest_V, capacity_Ah } = outlet
  const { soc, perCell_V } = leadAcidRest.value
  const held = (value: number) => Math.min(1, Math.max(0, value))
  const blocks = starterBlocks(outlet)
  const whole_Ah = capacity_Ah ?? starterCapacity_Ah.value
  return {
    capacity_Ah: whole_Ah,
    resistance_ohm: blocks * starterResistance_ohm.value,
    soc: held(interpolate(perCell_V, soc, rest_V === undefined ? starterRest_V.value : rest_V / blocks)),
    loadFloor_V: 0,
    restFloor_V: blocks * starterFloor_V.value,
    rest_V: at => blocks * interpolate(soc, perCell_V, held(at)),
    energyBetween_Wh: (from, to) => blocks * whole_Ah * integrateCurve(leadAcidRest.value, from, to),
  }
}
