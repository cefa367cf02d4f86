// A charge in a few dozen steps and with the heat it makes, for the many cells of a band: times within a fifth of a per cent.

import { crossing } from '../numbers/crossing.ts'
import { type QuickCell, type QuickLaw, QuickRun } from './quick-run.ts'
import { stepsOf } from './terms.ts'

/** Charge of one step at constant current, finer where the curve is steep; fall of the current at constant voltage. */
const stepSoc = 1 / 16
const fineSoc = 1 / 80
const steepBelow = 0.1
const fall = 0.08
const firstStep_s = 4
const mostSteps = 4000

/** Charges `cell` from rest; its times are `timeFactor` times those of the model. */
export function quickCharge(cell: QuickCell, law: QuickLaw, timeFactor = 1) {
  const run = new QuickRun(cell, law)
  // A charger's clock is right, however the model is off.
  const end_s = law.end_s / timeFactor
  const last_A = holdCurrent(run, end_s)
  const timeToCutoff_s = run.time_s * timeFactor
  if (law.stepsDown) for (const step_A of stepsOf(law)) holdCurrent(run, end_s, step_A)
  else if (run.soc < law.endSoc && run.time_s < end_s) holdVoltage(run, last_A, end_s)
  return {
    duration_s: run.time_s * timeFactor,
    timeToCutoff_s,
    charge_Ah: (run.soc - law.startSoc) * cell.capacity_Ah,
    heat_Wh: run.heat_J / 3600,
    warmest_C: run.warmest_C,
    /** On average over the time. */
    warmed_K: run.time_s > 0 ? run.warmth_Ks / run.time_s - cell.ambient_C : 0,
  }
}

/** Slow start, constant current, of `set_A`, and constant power up to the cutoff; returns the current there. */
function holdCurrent(run: QuickRun, end_s: number, set_A = run.law.current_A): number {
  const { law, cell } = run
  const capacity_As = cell.capacity_Ah * 3600
  let isPrecharged = false
  let amps = law.precharge_A
  for (let step = 0; step < mostSteps; step++) {
    const { inner_V, series_ohm } = run
    isPrecharged ||= inner_V + law.precharge_A * series_ohm >= law.precharge_V
    const terminal_V = inner_V + amps * series_ohm
    const ceiling_V = isPrecharged ? law.cutoff_V : law.precharge_V
    amps = Math.min(isPrecharged ? set_A : law.precharge_A, law.power_W / terminal_V)
    if (inner_V + amps * series_ohm >= law.cutoff_V || run.soc >= law.endSoc || run.time_s >= end_s) return amps
    const width = step < 3 || run.soc < steepBelow ? fineSoc : stepSoc
    const step_s = Math.min((Math.min(width, law.endSoc - run.soc) * capacity_As) / amps, end_s - run.time_s)
    run.go(firstReaching(run, amps, ceiling_V, step_s), amps, amps)
  }
  return amps
}

/** The part of a step until the terminals reach `ceiling_V`; the whole step where they do not. */
function firstReaching(run: QuickRun, amps: number, ceiling_V: number, step_s: number): number {
  const above_V = (after_s: number) => {
    run.look(after_s, amps)
    return run.seen_V(amps) - ceiling_V
  }
  return above_V(step_s) > 0 ? crossing(0, step_s, step_s / 4096, above_V) : step_s
}

/** Constant voltage until the current is down, or the charge that was asked for is in. */
function holdVoltage(run: QuickRun, last_A: number, end_s: number): void {
  const { law, cell } = run
  const capacity_As = cell.capacity_Ah * 3600
  let amps = Math.min(last_A, (law.cutoff_V - run.inner_V) / run.series_ohm)
  let step_s = firstStep_s
  for (let step = 0; step < mostSteps && amps > law.termination_A; step++) {
    run.look(step_s, amps)
    const end_A = Math.min(law.current_A, run.holding(law.cutoff_V, amps))
    const fell = Math.abs(amps - end_A) / amps
    if (fell > 3 * fall) {
      step_s *= fall / fell
      continue
    }
    const share = Math.min(
      end_A < law.termination_A ? Math.log(amps / law.termination_A) / Math.log(amps / Math.max(end_A, 1e-9)) : 1,
      (2 * (law.endSoc - run.soc) * capacity_As) / (amps + end_A) / step_s,
      (end_s - run.time_s) / step_s,
    )
    run.go(step_s * share, amps, amps + (end_A - amps) * share)
    if (share < 1) return
    amps = end_A
    step_s *= Math.min(2, fall / Math.max(fell, 1e-9))
  }
}
