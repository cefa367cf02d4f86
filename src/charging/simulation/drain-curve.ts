// The voltage of a battery source under load, through the same charges one after the other.

import type { BatteryStore } from '../things/battery-store.ts'
import { type Draw, drain } from './drain.ts'

export interface DrainPoint {
  readonly time_s: number
  /** Of the whole battery, in V: at rest at the start, then under load. */
  readonly voltage_V: number
}

/** Runs `draws` on the store `times` times from its state of charge; ends early where its floor is met. */
export function drainCurve(store: BatteryStore, draws: readonly Draw[], times: number): DrainPoint[] {
  const points: DrainPoint[] = [{ time_s: 0, voltage_V: store.rest_V(store.soc) }]
  let soc = store.soc
  let time_s = 0
  for (let run = 0; run < times; run++) {
    for (const draw of draws) {
      const drained = drain(store, soc, [draw])
      if (!drained.completed) return points
      soc = drained.soc
      time_s += draw.duration_s
      if (Number.isFinite(drained.lowest_V)) points.push({ time_s, voltage_V: drained.lowest_V })
    }
  }
  return points
}
