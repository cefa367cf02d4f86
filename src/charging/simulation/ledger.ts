// Books what one stage of a charge took: time, charge, energy at the terminals and heat.

import { integrateCurve } from '../things/curve.ts'
import { type Cell, type Moment, type RcPair, terminalVoltage } from './cell.ts'
import type { CurvePoint, Stage, StageKind } from './charge.ts'

export interface Entry {
  readonly stage: Stage
  readonly heat_Wh: number
  readonly points: readonly CurvePoint[]
}

/**
 * Books the states of one stage of a pack with `series` cells in series. Heat counts what the resistances
 * have turned to heat and what the two pairs still hold, which turns to heat as the pack rests.
 */
export function bookStage(kind: StageKind, cell: Cell, series: number, states: readonly Moment[]): Entry {
  let energy_Wh = 0
  let heat_Wh = 0
  for (let i = 1; i < states.length; i++) {
    const from = states[i - 1] as Moment
    const to = states[i] as Moment
    const lost_Wh = (lossIn(cell, from, to) * series) / 3600
    heat_Wh += lost_Wh
    energy_Wh += lost_Wh + integrateCurve(cell.curve, from.soc, to.soc) * cell.capacity_Ah * series
  }
  const first = states[0] as Moment
  const last = states.at(-1) as Moment
  const stage: Stage = {
    kind,
    duration_s: last.time_s - first.time_s,
    charge_Ah: (last.soc - first.soc) * cell.capacity_Ah,
    energy_Wh,
  }
  const points = states.map(at => ({
    time_s: at.time_s,
    perCell_V: terminalVoltage(cell, at),
    current_A: at.current_A,
    soc: at.soc,
  }))
  return { stage, heat_Wh, points }
}

/** Energy lost in one cell over one step, in J. */
function lossIn(cell: Cell, from: Moment, to: Moment): number {
  const step_s = to.time_s - from.time_s
  const a = from.current_A
  const b = to.current_A
  const mean_A = (a + b) / 2
  const pairVoltSeconds =
    voltSeconds(cell.fast, from.fast_V, to.fast_V, mean_A, step_s) +
    voltSeconds(cell.slow, from.slow_V, to.slow_V, mean_A, step_s)
  return (cell.series_ohm * step_s * (a * a + a * b + b * b)) / 3 + mean_A * pairVoltSeconds
}

/** Integral of a pair's voltage over a step, from its own equation: time constant * dV/dt = R I - V. */
function voltSeconds(pair: RcPair, start_V: number, end_V: number, mean_A: number, step_s: number): number {
  return pair.resistance_ohm * mean_A * step_s - pair.timeConstant_s * (end_V - start_V)
}
