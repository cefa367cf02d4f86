// The state of a cell under charge that warms itself, carried on from step to step: for the many cells of a band, so all of
// it is plain numbers that nothing is made anew for.

import { diffusionParts } from './cell.ts'
import { resistanceFactor } from './resistance.ts'
import type { ChargerTerms } from './terms.ts'

/** One cell position of a pack, in its own ohms at 25 °C, and what it is charged with. */
export interface QuickCell {
  readonly capacity_Ah: number
  /** Open-circuit volts at equal steps of charge from 0 to 1. */
  readonly curve_V: Float64Array
  readonly series_ohm: number
  readonly diffusion_s: number
  /** Of the cell and around it, in °C. */
  readonly ambient_C: number
  /** Heat that warms it by a degree, in J, and heat that it gives off a degree, in W. */
  readonly heat_JperK: number
  readonly loss_WperK: number
}

/** The charger, and where the cell stands before. */
export interface QuickLaw extends ChargerTerms {
  /** Below 0 for a cell drained past the curve's empty end. */
  readonly startSoc: number
  /** How the curve falls below its empty end, in V a share of charge. */
  readonly belowEmpty_V: number
}

/** `resistanceFactor` at whole degrees, as it is asked for in every step. */
const coldest_C = -20
const factors = Float64Array.from({ length: 81 }, (_, index) => resistanceFactor(coldest_C + index))

/** The state of a cell on its way, and what its charge has brought so far. Divisions are its dearest steps, so it has few. */
export class QuickRun {
  readonly cell: QuickCell
  readonly law: QuickLaw
  time_s = 0
  soc: number
  heat_J = 0
  warmth_Ks = 0
  warmest_C: number
  /** Voltage of the open circuit of the surface, and the resistance before it, as the cell is now. */
  inner_V: number
  series_ohm = 0
  /** After the step that `look` was asked about: the charge at the surface without a current, and what an ampere adds. */
  private none_soc = 0
  private perAmp_soc = 0
  private cell_C: number
  /** By which the open circuit of the surface is above that of the whole. */
  private ahead_V = 0
  private readonly fast: Part
  private readonly slow: Part
  private readonly perAmpSecond: number
  private readonly kelvinPerWatt: number
  private readonly coolingPerSecond: number

  constructor(cell: QuickCell, law: QuickLaw) {
    this.cell = cell
    this.law = law
    this.soc = law.startSoc
    this.perAmpSecond = 1 / (3600 * cell.capacity_Ah)
    this.kelvinPerWatt = 1 / cell.loss_WperK
    this.coolingPerSecond = -cell.loss_WperK / cell.heat_JperK
    this.fast = new Part(diffusionParts.fast, cell.diffusion_s, this.perAmpSecond)
    this.slow = new Part(diffusionParts.slow, cell.diffusion_s, this.perAmpSecond)
    this.cell_C = cell.ambient_C
    this.warmest_C = cell.ambient_C
    this.atItsWarmth()
    this.inner_V = this.openCircuit_V(law.startSoc)
  }

  openCircuit_V(soc: number): number {
    const { curve_V } = this.cell
    if (soc < 0) return (curve_V[0] as number) + soc * this.law.belowEmpty_V
    const last = curve_V.length - 1
    const at = soc * last
    const i = at >= last ? last - 1 : Math.floor(at)
    const left_V = curve_V[i] as number
    return left_V + ((curve_V[i + 1] as number) - left_V) * (at - i)
  }

  /** Sees how far the surface gets in a step from `start_A`. */
  look(step_s: number, start_A: number): void {
    const { fast, slow } = this
    fast.over(step_s)
    slow.over(step_s)
    const moved = 0.5 * step_s * this.perAmpSecond
    this.none_soc = this.soc + fast.after(start_A, 0) + slow.after(start_A, 0) + start_A * moved
    this.perAmp_soc = fast.perEndAmp + slow.perEndAmp + moved
  }

  /** At the terminals, were the current `end_A` at the end of the step that was looked at. */
  seen_V(end_A: number): number {
    return this.openCircuit_V(this.none_soc + end_A * this.perAmp_soc) + end_A * this.series_ohm
  }

  /** The current at the end of that step that holds the terminals at `volts`: tried where the curve is straight about `near_A`. */
  holding(volts: number, near_A: number): number {
    const { curve_V } = this.cell
    const last = curve_V.length - 1
    const segmentAt = (amps: number) =>
      Math.max(-1, Math.floor(Math.min((this.none_soc + amps * this.perAmp_soc) * last, last - 1)))
    let amps = near_A
    for (let tries = 0; tries < 4; tries++) {
      const i = segmentAt(amps)
      const left_V = curve_V[Math.max(0, i)] as number
      const rise_V = i < 0 ? this.law.belowEmpty_V : ((curve_V[i + 1] as number) - left_V) * last
      const none_V = left_V + rise_V * (this.none_soc - Math.max(0, i) / last)
      amps = (volts - none_V) / (rise_V * this.perAmp_soc + this.series_ohm)
      if (segmentAt(amps) === i) break
    }
    return amps
  }

  /** Goes on by `step_s` while the current goes in a straight line: how far the surface is ahead, heat and warmth. */
  go(step_s: number, start_A: number, end_A: number): void {
    const { fast, slow } = this
    fast.go(step_s, start_A, end_A)
    slow.go(step_s, start_A, end_A)
    const mean_A = (start_A + end_A) / 2
    this.soc += mean_A * step_s * this.perAmpSecond
    const before_V = this.ahead_V
    this.inner_V = this.openCircuit_V(this.soc + fast.soc + slow.soc)
    this.ahead_V = this.inner_V - this.openCircuit_V(this.soc)
    const heat_W = mean_A * (mean_A * this.series_ohm + (before_V + this.ahead_V) / 2)
    const settled_C = this.cell.ambient_C + heat_W * this.kelvinPerWatt
    this.cell_C = settled_C + (this.cell_C - settled_C) * Math.exp(step_s * this.coolingPerSecond)
    this.warmth_Ks += this.cell_C * step_s
    this.warmest_C = Math.max(this.warmest_C, this.cell_C)
    this.heat_J += heat_W * step_s
    this.time_s += step_s
    this.atItsWarmth()
  }

  private atItsWarmth(): void {
    const at = Math.min(80, Math.max(0, Math.round(this.cell_C - coldest_C)))
    this.series_ohm = this.cell.series_ohm * (factors[at] as number)
    this.fast.factor = factors[at] as number
    this.slow.factor = factors[at] as number
  }
}

/** One part of what the surface is ahead: as `advance` has it, with what one step shares worked out once. */
class Part {
  soc = 0
  /** Of the diffusion at 25 °C. */
  factor = 1
  perEndAmp = 0
  private perStartAmp = 0
  private left = 1
  /** At 25 °C: what an ampere brings it to in the end, and how fast that comes. */
  private readonly perAmp: number
  private readonly perSecond: number
  private step_s = 0
  private madeFor = 0

  constructor({ share, times }: { share: number; times: number }, diffusion_s: number, perAmpSecond: number) {
    this.perAmp = share * diffusion_s * perAmpSecond
    this.perSecond = 1 / (times * diffusion_s)
  }

  over(step_s: number): void {
    const { factor } = this
    if (step_s === this.step_s && factor === this.madeFor) return
    this.step_s = step_s
    this.madeFor = factor
    const x = (step_s * this.perSecond) / factor
    const gone = -Math.expm1(-x)
    const perAmp = this.perAmp * factor
    this.left = 1 - gone
    this.perEndAmp = x > 0 ? perAmp * (1 - gone / x) : 0
    this.perStartAmp = perAmp * gone - this.perEndAmp
  }

  after(start_A: number, end_A: number): number {
    return this.soc * this.left + start_A * this.perStartAmp + end_A * this.perEndAmp
  }

  go(step_s: number, start_A: number, end_A: number): void {
    this.over(step_s)
    this.soc = this.after(start_A, end_A)
  }
}
