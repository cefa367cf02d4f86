// One cell position of a pack as a circuit: open-circuit voltage, a series resistance and two resistor-capacitor pairs.

import { type CellClass, likelyClasses, type Resistances, typicalResistance } from '../things/cell-class.ts'
import type { VoltageCurve } from '../things/chemistry.ts'
import { computed } from '../things/cited.ts'
import { belowEmpty, interpolate } from '../things/curve.ts'
import type { Pack } from '../things/pack.ts'
import { agedBy_ohmAh, resistanceFactor } from './resistance.ts'

/** A resistor beside a capacitor: its voltage follows the current with a time constant. */
export interface RcPair {
  readonly resistance_ohm: number
  readonly timeConstant_s: number
}

/** All parallel cells of one position in series, taken together. */
export interface Cell {
  readonly capacity_Ah: number
  readonly curve: VoltageCurve
  readonly series_ohm: number
  readonly fast: RcPair
  readonly slow: RcPair
}

/** Of what comes on top within minutes, how much within half a minute; and how long the rest takes. */
export const laterParts = computed(
  { fastShare: 0.2, fast_s: 30, slow_s: 240 },
  'measured charges of five datasets, whose totals are nearest at 200 to 400 s (tests/outside/charges)',
)

/**
 * Most likely resistances of a cell of `pack` that holds `capacity_Ah`. A reading, taken at `temperature_C`, stands for
 * what a reading shows; what comes on top is that of the classes that it fits, and what age has added by the capacity lost.
 */
export function resistancesOf(pack: Pack, temperature_C: number, capacity_Ah = pack.capacity_Ah): Resistances {
  const reading_ohmAh = readingOf(pack, temperature_C)
  const { atOnce_ohmAh, later_ohmAh } = typicalResistance(classesOf(pack, reading_ohmAh), reading_ohmAh)
  return { atOnce_ohmAh, later_ohmAh: later_ohmAh + agedBy_ohmAh(capacity_Ah / pack.capacity_Ah) }
}

/** A reading of a cell for 1 Ah at 25 °C, in ohm; taken at `temperature_C`. */
export function readingOf({ cellResistance_ohm, capacity_Ah }: Pack, temperature_C: number): number | undefined {
  return cellResistance_ohm && (cellResistance_ohm * capacity_Ah) / resistanceFactor(temperature_C)
}

/** The classes that a cell of `pack` may be of, by what its label and a reading tell. */
export const classesOf = ({ chemistry, dischargeRate_C }: Pack, reading_ohmAh?: number): readonly CellClass[] =>
  likelyClasses(chemistry.classes.value, { dischargeRate_C, reading_ohmAh })

/** The circuit of one cell position of `pack` that holds `capacity_Ah`, at `temperature_C`: of the most likely cell. */
export function cellOf(pack: Pack, temperature_C: number, capacity_Ah = pack.capacity_Ah): Cell {
  const resistances = resistancesOf(pack, temperature_C, capacity_Ah)
  return cellWith(pack, temperature_C, { ...resistances, capacity_Ah, slow_s: laterParts.value.slow_s })
}

/** What a cell is made of besides its curve. */
export interface CellParts extends Resistances {
  readonly capacity_Ah: number
  readonly slow_s: number
}

/** The circuit of one cell position of `pack` with such parts, at `temperature_C`. */
export function cellWith(pack: Pack, temperature_C: number, parts: CellParts): Cell {
  const perOhmAh = resistanceFactor(temperature_C) / pack.capacity_Ah
  const { fastShare, fast_s } = laterParts.value
  return {
    capacity_Ah: parts.capacity_Ah,
    curve: belowEmpty(pack.chemistry),
    series_ohm: parts.atOnce_ohmAh * perOhmAh,
    fast: { resistance_ohm: fastShare * parts.later_ohmAh * perOhmAh, timeConstant_s: fast_s },
    slow: { resistance_ohm: (1 - fastShare) * parts.later_ohmAh * perOhmAh, timeConstant_s: parts.slow_s },
  }
}

/** The same cell with all its resistances `factor` times as large. */
export function scaleResistance(cell: Cell, factor: number): Cell {
  const scale = (pair: RcPair): RcPair => ({ ...pair, resistance_ohm: pair.resistance_ohm * factor })
  return { ...cell, series_ohm: cell.series_ohm * factor, fast: scale(cell.fast), slow: scale(cell.slow) }
}

/** The state of a cell under charge. */
export interface Moment {
  readonly time_s: number
  /** Not clamped: below 0 for a cell drained past the curve's empty end. */
  readonly soc: number
  readonly current_A: number
  /** Voltages across the two pairs. */
  readonly fast_V: number
  readonly slow_V: number
}

/** Voltage at the terminals less the drop over the series resistance. */
export function innerVoltage(cell: Cell, at: Moment): number {
  return interpolate(cell.curve.soc, cell.curve.perCell_V, at.soc) + at.fast_V + at.slow_V
}

export function terminalVoltage(cell: Cell, at: Moment): number {
  return innerVoltage(cell, at) + at.current_A * cell.series_ohm
}

/** The state `step_s` later when the current goes in a straight line to `end_A`: exact for that current. */
export function advance(cell: Cell, from: Moment, step_s: number, end_A: number): Moment {
  return {
    time_s: from.time_s + step_s,
    soc: from.soc + ((from.current_A + end_A) * step_s) / 7200 / cell.capacity_Ah,
    current_A: end_A,
    fast_V: followRamp(cell.fast, from.fast_V, from.current_A, end_A, step_s),
    slow_V: followRamp(cell.slow, from.slow_V, from.current_A, end_A, step_s),
  }
}

function followRamp(pair: RcPair, start_V: number, start_A: number, end_A: number, step_s: number): number {
  const x = step_s / pair.timeConstant_s
  const gone = -Math.expm1(-x)
  const ramp = (end_A - start_A) * (x > 0 ? 1 - gone / x : 0)
  return start_V * (1 - gone) + pair.resistance_ohm * (start_A * gone + ramp)
}
