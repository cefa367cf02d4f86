// A charge in a few dozen steps and with the heat it makes, for the many cells of a band: times within a fifth of a per cent.
// A band takes some three thousand steps. So what goes on from step to step is a local number of one function: handed on to
// another, or kept in an object, each would be made anew, and the collector would take as long as the charge. And divisions
// are its dearest steps, so it has few.

import { crossing } from '../numbers/crossing.ts'
import { diffusionParts } from './cell.ts'
import { factorAt, goneIn, type QuickCell, type QuickLaw, segmentOf, voltsAt } from './quick-cell.ts'

/** Charge of one step at constant current, finer where the curve is steep; fall of the current at constant voltage. */
const stepSoc = 1 / 16
const fineSoc = 1 / 80
const steepBelow = 0.1
const fall = 0.08
const firstStep_s = 4
const mostSteps = 4000
const { fast, slow } = diffusionParts

/** Charges `cell` from rest; its times are `timeFactor` times those of the model. */
export function quickCharge(cell: QuickCell, law: QuickLaw, timeFactor = 1) {
  const { capacity_Ah, curve_V, ambient_C, diffusion_s } = cell
  const { cutoff_V, precharge_V, precharge_A, power_W, termination_A, endSoc, belowEmpty_V } = law
  // A charger's clock is right, however the model is off.
  const end_s = law.end_s / timeFactor
  const capacity_As = capacity_Ah * 3600
  const perAmpSecond = 1 / capacity_As
  const kelvinPerWatt = 1 / cell.loss_WperK
  const coolingPerSecond = cell.loss_WperK / cell.heat_JperK
  const last = curve_V.length - 1
  // Of what the surface is ahead, at 25 °C: what an ampere brings either part to in the end, and how fast that comes.
  const fastPerAmp = fast.share * diffusion_s * perAmpSecond
  const slowPerAmp = slow.share * diffusion_s * perAmpSecond
  const fastPerSecond = 1 / (fast.times * diffusion_s)
  const slowPerSecond = 1 / (slow.times * diffusion_s)

  // The cell: its charge, by which its surface is ahead, its warmth, and what its charge has brought so far.
  let soc = law.startSoc
  let fast_soc = 0
  let slow_soc = 0
  let cell_C = ambient_C
  let factor = factorAt(ambient_C)
  let time_s = 0
  let heat_J = 0
  let warmth_Ks = 0
  let warmest_C = ambient_C
  // Voltage of the open circuit of the surface, and by which that is above that of the whole.
  let inner_V = voltsAt(curve_V, belowEmpty_V, soc)
  let ahead_V = 0

  // The charger: slow start, constant current, of `set_A`, and constant power up to the cutoff; then it holds that, or goes
  // up to it again with smaller currents.
  let set_A = law.current_A
  let amps = precharge_A
  let end_A = amps
  let isPrecharged = false
  let timeToCutoff_s: number | undefined
  let isHeld = false
  let steps = 0

  // The step: cut where something is just reached at its end; what is left of either part after it, and what an ampere at
  // its start and at its end adds.
  let step_s = firstStep_s
  let growth = 1
  let isCut = false
  let lookedAt_s = -1
  let lookedFor = 0
  let fastLeft = 1
  let slowLeft = 1
  let fastPerStart = 0
  let slowPerStart = 0
  let fastPerEnd = 0
  let slowPerEnd = 0

  for (let round = 0; round < mostSteps; round++) {
    const series_ohm = cell.series_ohm * factor
    if (!isHeld && !isCut) {
      isPrecharged ||= inner_V + precharge_A * series_ohm >= precharge_V
      amps = Math.min(isPrecharged ? set_A : precharge_A, power_W / (inner_V + amps * series_ohm))
      const isOver = soc >= endSoc || time_s >= end_s
      if (isOver || inner_V + amps * series_ohm >= cutoff_V) {
        const isFirst = timeToCutoff_s === undefined
        timeToCutoff_s ??= time_s
        if (law.stepsDown) {
          set_A = (isFirst ? Math.min(set_A, power_W / cutoff_V) : set_A) / 2
          if (set_A < termination_A) break
          amps = precharge_A
          isPrecharged = false
          steps = 0
          continue
        }
        amps = Math.min(amps, (cutoff_V - inner_V) / series_ohm)
        if (isOver || amps <= termination_A) break
        isHeld = true
        step_s = firstStep_s
        continue
      }
      end_A = amps
      const width = steps < 3 || soc < steepBelow ? fineSoc : stepSoc
      step_s = Math.min((Math.min(width, endSoc - soc) * capacity_As) / amps, end_s - time_s)
    }

    // Sees how far the surface gets.
    if (step_s !== lookedAt_s || factor !== lookedFor) {
      lookedAt_s = step_s
      lookedFor = factor
      const fastX = (step_s * fastPerSecond) / factor
      const slowX = (step_s * slowPerSecond) / factor
      const fastGone = goneIn(fastX)
      const slowGone = goneIn(slowX)
      fastLeft = 1 - fastGone
      slowLeft = 1 - slowGone
      fastPerEnd = fastX > 0 ? fastPerAmp * factor * (1 - fastGone / fastX) : 0
      slowPerEnd = slowX > 0 ? slowPerAmp * factor * (1 - slowGone / slowX) : 0
      fastPerStart = fastPerAmp * factor * fastGone - fastPerEnd
      slowPerStart = slowPerAmp * factor * slowGone - slowPerEnd
    }
    const fastNone_soc = fast_soc * fastLeft + amps * fastPerStart
    const slowNone_soc = slow_soc * slowLeft + amps * slowPerStart
    const moved = 0.5 * step_s * perAmpSecond
    // The charge at the surface without a current at the end of the step, and what an ampere there adds.
    const none_soc = soc + fastNone_soc + slowNone_soc + amps * moved
    const perAmp_soc = fastPerEnd + slowPerEnd + moved
    if (!isCut && isHeld) {
      // The current that holds the cutoff: tried where the curve is straight.
      let i = segmentOf((none_soc + amps * perAmp_soc) * last, last)
      for (let tries = 0; tries < 4; tries++) {
        const left_V = curve_V[Math.max(0, i)] as number
        const rise_V = i < 0 ? belowEmpty_V : ((curve_V[i + 1] as number) - left_V) * last
        const none_V = left_V + rise_V * (none_soc - Math.max(0, i) / last)
        end_A = (cutoff_V - none_V) / (rise_V * perAmp_soc + series_ohm)
        const there = segmentOf((none_soc + end_A * perAmp_soc) * last, last)
        if (there === i) break
        i = there
      }
      end_A = Math.min(law.current_A, end_A)
      const fell = Math.abs(amps - end_A) / amps
      if (fell > 3 * fall) {
        step_s *= fall / fell
        continue
      }
      growth = Math.min(2, fall / Math.max(fell, 1e-9))
      const share = Math.min(
        end_A < termination_A ? Math.log(amps / termination_A) / Math.log(amps / Math.max(end_A, 1e-9)) : 1,
        (2 * (endSoc - soc) * capacity_As) / (amps + end_A) / step_s,
        (end_s - time_s) / step_s,
      )
      if (share < 1) {
        end_A = amps + (end_A - amps) * share
        step_s *= share
        isCut = true
        continue
      }
    } else if (!isCut) {
      const open_V = (isPrecharged ? cutoff_V : precharge_V) - amps * series_ohm
      if (voltsAt(curve_V, belowEmpty_V, none_soc + amps * perAmp_soc) > open_V) {
        const from = { soc, fast_soc, slow_soc, factor, amps }
        step_s = firstReaching(cell, belowEmpty_V, from, open_V, step_s)
        isCut = true
        continue
      }
    }

    // Takes it, while the current goes in a straight line: charge, heat and warmth.
    const mean_A = (amps + end_A) / 2
    fast_soc = fastNone_soc + end_A * fastPerEnd
    slow_soc = slowNone_soc + end_A * slowPerEnd
    soc += mean_A * step_s * perAmpSecond
    inner_V = voltsAt(curve_V, belowEmpty_V, soc + fast_soc + slow_soc)
    const before_V = ahead_V
    ahead_V = inner_V - voltsAt(curve_V, belowEmpty_V, soc)
    const heat_W = mean_A * (mean_A * series_ohm + (before_V + ahead_V) / 2)
    const settled_C = ambient_C + heat_W * kelvinPerWatt
    cell_C = settled_C + (cell_C - settled_C) * (1 - goneIn(step_s * coolingPerSecond))
    factor = factorAt(cell_C)
    warmth_Ks += cell_C * step_s
    warmest_C = Math.max(warmest_C, cell_C)
    heat_J += heat_W * step_s
    time_s += step_s
    steps++
    if (isHeld) {
      if (isCut || end_A <= termination_A) break
      amps = end_A
      step_s *= growth
    }
    isCut = false
  }
  return {
    duration_s: time_s * timeFactor,
    timeToCutoff_s: (timeToCutoff_s ?? time_s) * timeFactor,
    charge_Ah: (soc - law.startSoc) * capacity_Ah,
    heat_Wh: heat_J / 3600,
    warmest_C,
    /** On average over the time. */
    warmed_K: time_s > 0 ? warmth_Ks / time_s - ambient_C : 0,
  }
}

/** The part of a step at constant current until the open circuit of the surface reaches `open_V`. */
function firstReaching(
  { capacity_Ah, curve_V, diffusion_s }: QuickCell,
  belowEmpty_V: number,
  from: Readonly<Record<'soc' | 'fast_soc' | 'slow_soc' | 'factor' | 'amps', number>>,
  open_V: number,
  step_s: number,
): number {
  const { soc, fast_soc, slow_soc, amps } = from
  const perSecond = amps / (3600 * capacity_Ah)
  const slowest_s = diffusion_s * from.factor
  /** A part of what the surface is ahead: it comes up to the current's share in time. */
  const after = (ahead_soc: number, { share, times }: typeof fast, after_s: number) => {
    const x = after_s / (times * slowest_s)
    const gone = goneIn(x)
    return ahead_soc * (1 - gone) + share * slowest_s * perSecond * gone
  }
  return crossing(0, step_s, step_s / 4096, after_s => {
    const ahead_soc = after(fast_soc, fast, after_s) + after(slow_soc, slow, after_s)
    return voltsAt(curve_V, belowEmpty_V, soc + perSecond * after_s + ahead_soc) - open_V
  })
}
