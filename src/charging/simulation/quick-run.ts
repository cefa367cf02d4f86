// The state of a cell under charge that warms itself, carried on from step to step: for the many cells of a band.

import { resistanceFactor } from './resistance.ts'
import type { ChargerTerms } from './terms.ts'

/** One cell position of a pack, in its own ohms at 25 °C, and what it is charged with. */
export interface QuickCell {
  readonly capacity_Ah: number
  /** Open-circuit volts at equal steps of charge from 0 to 1. */
  readonly curve_V: Float64Array
  readonly series_ohm: number
  readonly fast_ohm: number
  readonly fast_s: number
  readonly slow_ohm: number
  readonly slow_s: number
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
  fast_V = 0
  slow_V = 0
  heat_J = 0
  warmth_Ks = 0
  cell_C: number
  warmest_C: number
  /** Resistances over those at 25 °C. */
  factor: number
  private step_s = 0
  private fastGone = 0
  private slowGone = 0
  private fastLag = 1
  private slowLag = 1
  private cooling = 1

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

  inner_V(): number {
    return this.openCircuit_V(this.soc) + this.fast_V + this.slow_V
  }

  series_ohm(): number {
    return this.cell.series_ohm * this.factor
  }

  /** Makes `step_s` the length of the steps that follow: the exponentials of most are those of the one before. */
  pace(step_s: number): void {
    if (step_s === this.step_s) return
    const { fast_s, slow_s, heat_JperK, loss_WperK } = this.cell
    this.step_s = step_s
    this.fastGone = -Math.expm1(-step_s / fast_s)
    this.slowGone = -Math.expm1(-step_s / slow_s)
    this.fastLag = (this.fastGone * fast_s) / step_s
    this.slowLag = (this.slowGone * slow_s) / step_s
    this.cooling = Math.exp((-step_s * loss_WperK) / heat_JperK)
  }

  /** What the fast pair holds after a step in which the current goes in a straight line. */
  fastAfter_V(start_A: number, end_A: number): number {
    const ohm = this.cell.fast_ohm * this.factor
    return this.fast_V * (1 - this.fastGone) + ohm * (start_A * this.fastGone + (end_A - start_A) * (1 - this.fastLag))
  }

  slowAfter_V(start_A: number, end_A: number): number {
    const ohm = this.cell.slow_ohm * this.factor
    return this.slow_V * (1 - this.slowGone) + ohm * (start_A * this.slowGone + (end_A - start_A) * (1 - this.slowLag))
  }

  /** Goes on by `step_s` while the current goes in a straight line: what the pairs hold, heat and warmth. */
  go(step_s: number, start_A: number, end_A: number): void {
    const { capacity_Ah, ambient_C, loss_WperK } = this.cell
    this.pace(step_s)
    const before_V = this.fast_V + this.slow_V
    this.fast_V = this.fastAfter_V(start_A, end_A)
    this.slow_V = this.slowAfter_V(start_A, end_A)
    const mean_A = (start_A + end_A) / 2
    const pairs_V = (before_V + this.fast_V + this.slow_V) / 2
    const heat_W = mean_A * (mean_A * this.series_ohm() + pairs_V)
    const settled_C = ambient_C + heat_W / loss_WperK
    this.cell_C = settled_C + (this.cell_C - settled_C) * this.cooling
    this.warmth_Ks += this.cell_C * step_s
    this.warmest_C = Math.max(this.warmest_C, this.cell_C)
    this.factor = factorAt(this.cell_C)
    this.heat_J += heat_W * step_s
    this.soc += (mean_A * step_s) / 3600 / capacity_Ah
    this.time_s += step_s
  }
}
