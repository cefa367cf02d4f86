// A flight pack as the supply of another device: what it gives down to its floor, for how long, and where to stop.

import { drain } from '../simulation/drain.ts'
import type { Permit } from '../situation/permit.ts'
import { batteryStore } from '../things/battery-store.ts'
import { practice } from '../things/cited.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import { socOf, startOf } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { batterySourceRate_C } from '../things/practice.ts'

export const converterEfficiency = practice(0.85, 'a small step-down converter passes on 85 to 95 % of its input')

/** From the device's socket into its battery. */
export const deviceEfficiency = practice(
  0.8,
  'about 80 % of what a phone or another device takes in ends up in its battery',
)

export interface Load {
  /** What the device takes, in W. */
  readonly power_W: number
  /** Of the converter, 0 to 1. */
  readonly efficiency?: number | undefined
  /** What the device's battery holds, in Wh. */
  readonly device_Wh?: number | undefined
}

/** Drains the pack of the permit, full where nothing else was told, at a constant power down to its floor. */
export function lend({ situation }: Permit, load: Load) {
  const { pack, house, from = { kind: 'named', name: 'full' } } = situation
  const { power_W, device_Wh, efficiency = converterEfficiency.value } = load
  const soc = socOf(startOf(from, pack.chemistry, house), pack.chemistry)
  const store = batteryStore(pack, house, soc)
  const drawn_W = power_W / efficiency
  const longest_s = (store.energyBetween_Wh(0, soc) * 3600) / drawn_W
  const { delivered_Wh, soc: leftSoc } = drain(store, soc, [{ power_W: drawn_W, duration_s: longest_s }])
  const given_Wh = delivered_Wh * efficiency
  return {
    /** Into the device, in Wh. */
    given_Wh,
    duration_s: (given_Wh / power_W) * 3600,
    /** How often it fills the device's battery. */
    fills: device_Wh === undefined ? undefined : (given_Wh * deviceEfficiency.value) / device_Wh,
    /** Where to stop, under load, in V. */
    stop_V: store.loadFloor_V,
    stopPerCell_V: store.loadFloor_V / pack.series,
    /** Where to stop at rest, in V a cell. */
    restStopPerCell_V: store.restFloor_V / pack.series,
    efficiency,
    /** Out of the pack, the most, just before it stops, in A. */
    current_A: drawn_W / store.loadFloor_V,
    /** Charge that stays in the pack, 0 to 1. */
    leftSoc,
    /** Most that may be lent, so that the current stays within 2C down to the floor, in W. */
    most_W: mostLent_W(pack, house, efficiency),
  }
}

function mostLent_W(pack: Pack, limits: HouseLimits, efficiency: number): number {
  const { loadFloor_V } = batteryStore(pack, limits, 1)
  return batterySourceRate_C.value * pack.capacity_Ah * loadFloor_V * efficiency
}
