// A flight pack as the supply of another device: what it gives down to its floor, for how long, and where to stop.

import { whyUnfit } from '../setting/fitness.ts'
import { type Refused, refuse } from '../setting/refusal.ts'
import { drain } from '../simulation/drain.ts'
import { batteryStore } from '../things/battery-store.ts'
import type { Cited } from '../things/chemistry.ts'
import { socAt } from '../things/curve.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import type { State } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { batterySourceRate_C } from '../things/practice.ts'

export const converterEfficiency: Cited = {
  value: 0.85,
  standing: 'common practice',
  source: 'a small step-down converter passes on 85 to 95 % of its input',
}

/** From the device's socket into its battery. */
export const deviceEfficiency: Cited = {
  value: 0.8,
  standing: 'common practice',
  source: 'about 80 % of what a phone or another device takes in ends up in its battery',
}

export interface LendRequest {
  readonly pack: Pack
  readonly from: State
  /** What the device takes, in W. */
  readonly power_W: number
  /** Of the converter, 0 to 1. */
  readonly efficiency?: number
  /** What the device's battery holds, in Wh. */
  readonly device_Wh?: number
  readonly limits: HouseLimits
}

export interface Lending {
  /** Into the device, in Wh. */
  readonly given_Wh: number
  readonly duration_s: number
  /** How often it fills the device's battery. */
  readonly fills?: number
  /** Where to stop, under load, in V. */
  readonly stop_V: number
  readonly stopPerCell_V: number
  readonly efficiency: number
  /** Out of the pack, the most, just before it stops, in A. */
  readonly current_A: number
  /** Charge that stays in the pack, 0 to 1. */
  readonly leftSoc: number
}

/** Drains the pack at a constant power down to its floor under load. */
export function lend(request: LendRequest): Lending | Refused {
  const { pack, from, power_W, limits, device_Wh, efficiency = converterEfficiency.value } = request
  const unfit = whyUnfit({ pack, ...(from.kind === 'rest' && { restPerCell_V: from.perCell_V }) })
  if (unfit) return unfit
  const soc = from.kind === 'soc' ? from.soc : socAt(pack.chemistry, from.perCell_V)
  const store = batteryStore(pack, limits, soc)
  const stop_V = store.loadFloor_V
  const rest_V = store.rest_V(soc)
  if (rest_V <= stop_V) return refuse({ kind: 'source at its floor', source_V: rest_V, floor_V: stop_V })
  const drawn_W = power_W / efficiency
  const longest_s = (store.energyBetween_Wh(0, soc) * 3600) / drawn_W
  const { delivered_Wh, soc: leftSoc } = drain(store, soc, [{ power_W: drawn_W, duration_s: longest_s }])
  const given_Wh = delivered_Wh * efficiency
  return {
    given_Wh,
    duration_s: (given_Wh / power_W) * 3600,
    ...(device_Wh !== undefined && { fills: (given_Wh * deviceEfficiency.value) / device_Wh }),
    stop_V,
    stopPerCell_V: stop_V / pack.series,
    efficiency,
    current_A: drawn_W / stop_V,
    leftSoc,
  }
}

/** Most power for a device, so that the current stays within 2C down to the floor, in W. */
export function mostLent_W(pack: Pack, limits: HouseLimits, efficiency = converterEfficiency.value): number {
  const { loadFloor_V } = batteryStore(pack, limits, 1)
  return batterySourceRate_C.value * pack.capacity_Ah * loadFloor_V * efficiency
}
