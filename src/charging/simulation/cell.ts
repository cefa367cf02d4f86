// One cell position of a pack: a series resistance, and the open-circuit voltage of the surface of its particles, into
// which the charge diffuses: while a current flows the surface is ahead of the whole.

import { type CellClass, likelyClasses, type Resistances, typicalResistance } from '../things/cell-class.ts'
import type { VoltageCurve } from '../things/chemistry.ts'
import { computed } from '../things/cited.ts'
import { belowEmpty, interpolate } from '../things/curve.ts'
import type { Pack } from '../things/pack.ts'
import { agedBy_h, resistanceFactor } from './resistance.ts'

/** All parallel cells of one position in series, taken together. */
export interface Cell {
  readonly capacity_Ah: number
  readonly curve: VoltageCurve
  readonly series_ohm: number
  /** By how much charge the surface is ahead in the end, as the time in which the current brings that much. */
  readonly diffusion_s: number
}

/** In a steady current: the share of what the surface is ahead, and its time constant over the whole. */
export const diffusionParts = computed(
  { slow: { share: 0.495, times: 0.743 }, fast: { share: 0.505, times: 0.13 } },
  'diffusion into a sphere under a constant flux (Crank 1975): the slowest term, and the others as one',
).value

/**
 * Most likely resistances of a cell of `pack` that holds `capacity_Ah`. A reading, taken at `temperature_C`, stands for
 * what a reading shows; what comes on top is that of the classes that it fits, and what age has added by the capacity lost.
 */
function resistancesOf(pack: Pack, temperature_C: number, capacity_Ah = pack.capacity_Ah): Resistances {
  const reading_ohmAh = readingOf(pack, temperature_C)
  const { atOnce_ohmAh, diffusion_h } = typicalResistance(classesOf(pack, reading_ohmAh), reading_ohmAh)
  return { atOnce_ohmAh, diffusion_h: diffusion_h + agedBy_h(capacity_Ah / pack.capacity_Ah) }
}

/** A reading of a cell for 1 Ah at 25 °C, in ohm; taken at `temperature_C`. */
export function readingOf({ cellResistance_ohm, capacity_Ah }: Pack, temperature_C: number): number | undefined {
  return cellResistance_ohm && (cellResistance_ohm * capacity_Ah) / resistanceFactor(temperature_C)
}

/** The classes that a cell of `pack` may be of, by what its label and a reading tell. */
export const classesOf = (pack: Pack, reading_ohmAh?: number): readonly CellClass[] =>
  likelyClasses(pack.chemistry.classes.value, { ...pack, reading_ohmAh })

/** The circuit of one cell position of `pack` that holds `capacity_Ah`, at `temperature_C`: of the most likely cell. */
export function cellOf(pack: Pack, temperature_C: number, capacity_Ah = pack.capacity_Ah): Cell {
  const resistances = resistancesOf(pack, temperature_C, capacity_Ah)
  return cellWith(pack, temperature_C, { ...resistances, capacity_Ah })
}

/** What a cell is made of besides its curve. */
export interface CellParts extends Resistances {
  readonly capacity_Ah: number
}

/** The circuit of one cell position of `pack` with such parts, at `temperature_C`. */
export function cellWith(pack: Pack, temperature_C: number, made: CellParts): Cell {
  const factor = resistanceFactor(temperature_C)
  return {
    capacity_Ah: made.capacity_Ah,
    curve: belowEmpty(pack.chemistry),
    series_ohm: (made.atOnce_ohmAh * factor) / pack.capacity_Ah,
    diffusion_s: made.diffusion_h * 3600 * factor,
  }
}

/** The same cell with its resistance and its diffusion `factor` times as large. */
export const scaleResistance = (cell: Cell, factor: number): Cell => ({
  ...cell,
  series_ohm: cell.series_ohm * factor,
  diffusion_s: cell.diffusion_s * factor,
})

/** The state of a cell under charge. */
export interface Moment {
  readonly time_s: number
  /** Not clamped: below 0 for a cell drained past the curve's empty end. */
  readonly soc: number
  readonly current_A: number
  /** By which the surface is ahead, in shares of the capacity: the part that comes and goes fast, and the slow one. */
  readonly fast_soc: number
  readonly slow_soc: number
}

/** A cell at rest. */
export const restedAt = (soc: number): Moment => ({ time_s: 0, soc, current_A: 0, fast_soc: 0, slow_soc: 0 })

export const surfaceSoc = ({ soc, fast_soc, slow_soc }: Moment): number => soc + fast_soc + slow_soc

export const openCircuit_V = ({ curve }: Cell, soc: number): number => interpolate(curve.soc, curve.perCell_V, soc)

/** Voltage at the terminals less the drop over the series resistance. */
export function innerVoltage(cell: Cell, at: Moment): number {
  return openCircuit_V(cell, surfaceSoc(at))
}

export function terminalVoltage(cell: Cell, at: Moment): number {
  return innerVoltage(cell, at) + at.current_A * cell.series_ohm
}

/** The state `step_s` later when the current goes in a straight line to `end_A`: exact for that current. */
export const advance = (cell: Cell, from: Moment, step_s: number, end_A: number): Moment =>
  stepFrom(cell, from, step_s).to(end_A)

/** The same for one current after the other; the surface's charge then is `none_soc` and so much for each ampere. */
export function stepFrom(cell: Cell, from: Moment, step_s: number) {
  const moved = step_s / 7200 / cell.capacity_Ah
  const fast = aheadIn(cell, diffusionParts.fast, from.fast_soc, from.current_A, step_s)
  const slow = aheadIn(cell, diffusionParts.slow, from.slow_soc, from.current_A, step_s)
  return {
    none_soc: from.soc + from.current_A * moved + fast.none_soc + slow.none_soc,
    perAmp_soc: moved + fast.perAmp_soc + slow.perAmp_soc,
    to: (end_A: number): Moment => ({
      time_s: from.time_s + step_s,
      soc: from.soc + ((from.current_A + end_A) * step_s) / 7200 / cell.capacity_Ah,
      current_A: end_A,
      fast_soc: fast.none_soc + end_A * fast.perAmp_soc,
      slow_soc: slow.none_soc + end_A * slow.perAmp_soc,
    }),
  }
}

/** By how much the surface is ahead after a step in which the current goes in a straight line. */
function aheadIn(
  { capacity_Ah, diffusion_s }: Pick<Cell, 'capacity_Ah' | 'diffusion_s'>,
  { share, times }: { readonly share: number; readonly times: number },
  start_soc: number,
  start_A: number,
  step_s: number,
) {
  const x = step_s / (times * diffusion_s)
  const gone = -Math.expm1(-x)
  const ramp = x > 0 ? 1 - gone / x : 0
  const perAmp = (share * diffusion_s) / 3600 / capacity_Ah
  return { none_soc: start_soc * (1 - gone) + perAmp * start_A * (gone - ramp), perAmp_soc: perAmp * ramp }
}
