// Drains a battery that feeds a charger: constant power over short spans, sag by one resistance, stop at the floor.

import { currentBehind_A } from '../numbers/behind.ts'
import type { BatteryStore } from '../things/battery-store.ts'

/** Power drawn for a while. */
export interface Draw {
  readonly power_W: number
  readonly duration_s: number
}

/** No step takes more than this share of the capacity, so that the voltage hardly moves within it. */
const longestStep_soc = 0.004

/** Runs `draws` on a battery that stands at `soc`; ends early where its floor is met. */
export function drain(store: BatteryStore, soc: number, draws: readonly Draw[]) {
  const run = {
    /** Whether every draw was carried above the floor. */
    completed: true,
    /** State of charge at the end: of the whole run, or where the floor was met. */
    soc,
    delivered_Wh: 0,
    /** Heat in the battery's own resistance, in Wh. */
    loss_Wh: 0,
    /** Lowest voltage under load at the battery's own plugs, in V. */
    lowest_V: Number.POSITIVE_INFINITY,
  }
  for (const { power_W, duration_s } of draws) {
    const rough_A = current_A(store, run.soc, power_W) ?? 0
    const steps = Math.max(1, Math.ceil((rough_A * duration_s) / 3600 / store.capacity_Ah / longestStep_soc))
    const step_h = duration_s / 3600 / steps
    for (let step = 0; step < steps; step++) {
      const after = stepped(store, run.soc, power_W, step_h)
      if (!after) return { ...run, completed: false }
      run.soc = after.soc
      run.delivered_Wh += power_W * step_h
      run.loss_Wh += after.loss_W * step_h
      run.lowest_V = Math.min(run.lowest_V, after.loaded_V)
    }
  }
  return run
}

/** One step by the midpoint rule; undefined where it would go below a floor. */
function stepped(store: BatteryStore, soc: number, power_W: number, step_h: number) {
  const first_A = current_A(store, soc, power_W)
  if (first_A === undefined) return undefined
  const middle_A = current_A(store, soc - (first_A * step_h) / 2 / store.capacity_Ah, power_W)
  if (middle_A === undefined) return undefined
  const end = soc - (middle_A * step_h) / store.capacity_Ah
  const end_A = current_A(store, end, power_W)
  if (end <= 0 || end_A === undefined) return undefined
  const loaded_V = store.rest_V(end) - end_A * (store.resistance_ohm - store.leads_ohm)
  if (loaded_V < store.loadFloor_V || store.rest_V(end) < store.restFloor_V) return undefined
  return { soc: end, loss_W: middle_A ** 2 * store.resistance_ohm, loaded_V }
}

/** Current at which the battery gives `power_W` at its terminals; undefined where it never can. */
const current_A = (store: BatteryStore, soc: number, power_W: number): number | undefined =>
  currentBehind_A(store.rest_V(Math.max(0, soc)), store.resistance_ohm, power_W)
