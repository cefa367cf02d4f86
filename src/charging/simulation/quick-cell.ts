// What the many cells of a band are, and what is looked up of one in each step of its charge.

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

/** Volts of the open circuit of a cell with a charge of `soc`. */
export function voltsAt(curve_V: Float64Array, belowEmpty_V: number, soc: number): number {
  if (soc < 0) return (curve_V[0] as number) + soc * belowEmpty_V
  const last = curve_V.length - 1
  const at = soc * last
  const i = at >= last ? last - 1 : at | 0
  const left_V = curve_V[i] as number
  return left_V + ((curve_V[i + 1] as number) - left_V) * (at - i)
}

/** The segment of a curve with `last` of them that holds a place; -1 below its empty end. */
export const segmentOf = (place: number, last: number): number => (place < 0 ? -1 : Math.min(place, last - 1) | 0)

/** `resistanceFactor` at whole degrees. */
const coldest_C = -20
const factors = Float64Array.from({ length: 81 }, (_, index) => resistanceFactor(coldest_C + index))

export const factorAt = (cell_C: number): number =>
  factors[Math.min(80.5, Math.max(0, cell_C - coldest_C + 0.5)) | 0] as number

/** So many values of e^-x a unit are looked up; between them a few terms of its series are as good as `Math.expm1`. */
const perUnit = 64
const units = 39
const goneAt = Float64Array.from({ length: (units + 1) * perUnit }, (_, index) => -Math.expm1(-index / perUnit))

/** 1 - e^-x within 1e-13 of it, for what is not below 0: three of them in each step were most of its time. */
export function goneIn(x: number): number {
  if (x >= units) return 1
  const i = (x * perUnit) | 0
  const r = x - i / perUnit
  const known = goneAt[i] as number
  return known + (1 - known) * r * (1 - r * (1 / 2 - r * (1 / 6 - r * (1 / 24 - r / 120))))
}
