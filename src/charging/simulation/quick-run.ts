// The state of a cell under charge that warms itself, carried on from step to step: for the many cells of a band.

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
const factorAt = (cell_C: number): number =>
  factors[Math.min(80, Math.max(0, Math.round(cell_C - coldest_C)))] as number

/** The state of a cell on its way, and what its charge has brought so far. */
export class QuickRun {
  readonly cell: QuickCell
  readonly law: QuickLaw
  time_s = 0
  soc: number
  heat_J = 0
  warmth_Ks = 0
  cell_C: number
  warmest_C: number
  /** Resistance and diffusion over those at 25 °C. */
  private factor: number
  private readonly slow = new Part('slow')
  private readonly fast = new Part('fast')
  /** By which the open circuit of the surface is above that of the whole. */
  private ahead_V = 0

  constructor(cell: QuickCell, law: QuickLaw) {
    this.cell = cell
    this.law = law
    this.soc = law.startSoc
    this.cell_C = cell.ambient_C
    this.warmest_C = cell.ambient_C
    this.factor = factorAt(cell.ambient_C)
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

  /** Of the surface, as it stands. */
  inner_V(): number {
    return this.openCircuit_V(this.soc + this.fast.soc + this.slow.soc)
  }

  series_ohm(): number {
    return this.cell.series_ohm * this.factor
  }

  /** The charge at the surface after a step from `start_A` to no current, and what each ampere at its end adds. */
  surfaceAfter(step_s: number, start_A: number): readonly [none: number, perAmp: number] {
    const { capacity_Ah } = this.cell
    const diffusion_s = this.cell.diffusion_s * this.factor
    this.fast.over(step_s, diffusion_s, capacity_Ah)
    this.slow.over(step_s, diffusion_s, capacity_Ah)
    const moved = step_s / 7200 / capacity_Ah
    return [
      this.soc + this.fast.after(start_A, 0) + this.slow.after(start_A, 0) + start_A * moved,
      this.fast.perEndAmp + this.slow.perEndAmp + moved,
    ]
  }

  /** Goes on by `step_s` while the current goes in a straight line: how far the surface is ahead, heat and warmth. */
  go(step_s: number, start_A: number, end_A: number): void {
    const { ambient_C, heat_JperK, loss_WperK, capacity_Ah } = this.cell
    this.surfaceAfter(step_s, start_A)
    this.fast.soc = this.fast.after(start_A, end_A)
    this.slow.soc = this.slow.after(start_A, end_A)
    const mean_A = (start_A + end_A) / 2
    this.soc += (mean_A * step_s) / 3600 / capacity_Ah
    const before_V = this.ahead_V
    this.ahead_V = this.inner_V() - this.openCircuit_V(this.soc)
    const heat_W = mean_A * (mean_A * this.series_ohm() + (before_V + this.ahead_V) / 2)
    const settled_C = ambient_C + heat_W / loss_WperK
    this.cell_C = settled_C + (this.cell_C - settled_C) * Math.exp((-step_s * loss_WperK) / heat_JperK)
    this.warmth_Ks += this.cell_C * step_s
    this.warmest_C = Math.max(this.warmest_C, this.cell_C)
    this.factor = factorAt(this.cell_C)
    this.heat_J += heat_W * step_s
    this.time_s += step_s
  }
}

/** One part of what the surface is ahead: as `advance` has it, with what one step shares worked out once. */
class Part {
  soc = 0
  perEndAmp = 0
  private readonly share: number
  private readonly times: number
  private left = 1
  private perStartAmp = 0
  private step_s = 0
  private diffusion_s = 0

  constructor(name: keyof typeof diffusionParts) {
    this.share = diffusionParts[name].share
    this.times = diffusionParts[name].times
  }

  over(step_s: number, diffusion_s: number, capacity_Ah: number): void {
    if (step_s === this.step_s && diffusion_s === this.diffusion_s) return
    this.step_s = step_s
    this.diffusion_s = diffusion_s
    const x = step_s / (this.times * diffusion_s)
    const gone = -Math.expm1(-x)
    const perAmp = (this.share * diffusion_s) / 3600 / capacity_Ah
    this.left = 1 - gone
    this.perEndAmp = perAmp * (1 - gone / x)
    this.perStartAmp = perAmp * gone - this.perEndAmp
  }

  after(start_A: number, end_A: number): number {
    return this.soc * this.left + start_A * this.perStartAmp + end_A * this.perEndAmp
  }
}
