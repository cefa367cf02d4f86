// Marches a cell through time under one law of the charger until a condition is met.

import { crossing } from '../numbers/crossing.ts'
import { segmentAt } from '../things/curve.ts'
import { type Cell, innerVoltage, type Moment, openCircuit_V, stepFrom, surfaceSoc } from './cell.ts'

/** What the charger holds. Never above `limit_A`. */
export type Law = { readonly hold: 'current'; readonly limit_A: number } | VariableLaw

type VariableLaw =
  | { readonly hold: 'power'; readonly power_W: number; readonly limit_A: number }
  | { readonly hold: 'voltage'; readonly perCell_V: number; readonly limit_A: number }

/**
 * Largest relative change of current in one step, and longest step over the time of the diffusion and over the time
 * that the law has held: they keep times within 0.2 % of the exact solution, nearly all within 0.05 %.
 */
const largestChange = 0.025
const longestOverSlow = 1 / 4
const longestOverElapsed = 1 / 30
const firstStep_s = 1
/** Steps into which one segment of the voltage curve is cut at constant current, for the chart's sake. */
const stepsPerSegment = 3

/**
 * The states from the moment `law` takes over until `isOver` is no longer negative, the last one just at
 * or past it; one state when it is over at once. `isOver` must rise with time.
 */
export function march(cell: Cell, law: Law, from: Moment, isOver: (at: Moment) => number): Moment[] {
  let at: Moment = { ...from, current_A: takeOver(cell, law, from) }
  const states = [at]
  let step_s = firstStep_s
  while (isOver(at) < 0) {
    const longest_s = Math.max(longestOverSlow * cell.diffusion_s, longestOverElapsed * (at.time_s - from.time_s))
    step_s = law.hold === 'current' ? stepWithinSegment(cell, at) : Math.min(step_s, longest_s)
    let next = stepToBend(cell, law, at, step_s)
    const change = Math.abs(next.current_A - at.current_A) / at.current_A
    if (change > 2 * largestChange) {
      step_s = (next.time_s - at.time_s) * Math.max(0.1, largestChange / change)
      continue
    }
    if (isOver(next) >= 0) next = locate(cell, law, at, next, isOver)
    states.push(next)
    at = next
    step_s *= Math.min(2, largestChange / Math.max(change, 1e-9))
  }
  return states
}

function stepOf(cell: Cell, law: Law, at: Moment, step_s: number): Moment {
  const step = stepFrom(cell, at, step_s)
  return step.to(endCurrent(cell, law, at, step))
}

/** A step cut short where the surface meets the next corner of the voltage curve, past which the slope is another. */
function stepToBend(cell: Cell, law: Law, at: Moment, longest_s: number): Moment {
  const { soc } = cell.curve
  const surface = surfaceSoc(at)
  const i = segmentAt(soc, surface + 1e-6)
  const bend = law.hold !== 'current' && i < soc.length - 2 ? (soc[i + 1] as number) : Number.POSITIVE_INFINITY
  let next = stepOf(cell, law, at, longest_s)
  for (let tries = 0; tries < 2 && surfaceSoc(next) > bend + 1e-9; tries++) {
    const step_s = ((next.time_s - at.time_s) * (bend - surface)) / (surfaceSoc(next) - surface)
    next = stepOf(cell, law, at, step_s)
  }
  return next
}

/** Current at the moment the law takes over a cell whose inner voltage is what it is. */
function takeOver(cell: Cell, law: Law, from: Moment): number {
  const inner_V = innerVoltage(cell, from)
  const { series_ohm } = cell
  if (law.hold === 'current') return law.limit_A
  if (law.hold === 'voltage') return Math.min(law.limit_A, (law.perCell_V - inner_V) / series_ohm)
  const current_A = (2 * law.power_W) / (inner_V + Math.sqrt(inner_V ** 2 + 4 * series_ohm * law.power_W))
  return Math.min(law.limit_A, current_A)
}

function stepWithinSegment(cell: Cell, at: Moment): number {
  const { soc } = cell.curve
  const i = segmentAt(soc, at.soc + 1e-12)
  const start = soc[i] as number
  const width = ((soc[i + 1] as number) - start) / stepsPerSegment
  const nextStop = start + width * (Math.floor((at.soc - start) / width + 1e-6) + 1)
  return ((nextStop - at.soc) * cell.capacity_Ah * 3600) / at.current_A
}

/**
 * Current at the end of a step that keeps the law there: secants on a rising, nearly straight function, until
 * they change it by less than matters or rounding hides the slope.
 */
function endCurrent(cell: Cell, law: Law, at: Moment, { none_soc, perAmp_soc }: ReturnType<typeof stepFrom>): number {
  if (law.hold === 'current') return law.limit_A
  const missAt = (end_A: number) => {
    const perCell_V = openCircuit_V(cell, none_soc + end_A * perAmp_soc) + end_A * cell.series_ohm
    return law.hold === 'voltage' ? perCell_V - law.perCell_V : perCell_V * end_A - law.power_W
  }
  let before_A = 0
  let missBefore = missAt(before_A)
  let end_A = at.current_A
  for (let i = 0; i < 8; i++) {
    const miss = missAt(end_A)
    const slope = (miss - missBefore) / (end_A - before_A)
    if (!(slope > 0)) break
    before_A = end_A
    missBefore = miss
    end_A -= miss / slope
    if (Math.abs(end_A - before_A) <= 1e-9 * at.current_A) break
  }
  return Math.min(law.limit_A, end_A)
}

/** The first state between `before` and `after` at which it is over. */
function locate(cell: Cell, law: Law, before: Moment, after: Moment, isOver: (at: Moment) => number): Moment {
  const step_s = after.time_s - before.time_s
  const over = (after_s: number) => isOver(stepOf(cell, law, before, after_s))
  return stepOf(cell, law, before, crossing(0, step_s, 1e-9 * step_s, over))
}
