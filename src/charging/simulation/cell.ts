// One cell position of a pack as a circuit: open-circuit voltage, a series resistance and two resistor-capacitor pairs.

import type { VoltageCurve } from '../things/chemistry.ts'
import { interpolate } from '../things/curve.ts'
import type { Pack } from '../things/pack.ts'

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

/**
 * Resistance at a temperature over that at 25 °C: geometric middle of two published production battery
 * tables, straight in the logarithm between their temperatures.
 */
const byTemperature = { temperature_C: [-20, 0, 25, 40, 60], log: [11.26, 2.387, 1, 0.86, 0.8].map(Math.log) } as const

/** Resistance of a cell at `temperature_C` over its resistance at 25 °C; beyond -20 and 60 °C the end value holds. */
export function resistanceFactor(temperature_C: number): number {
  const within_C = Math.min(60, Math.max(-20, temperature_C))
  return Math.exp(interpolate(byTemperature.temperature_C, byTemperature.log, within_C))
}

/**
 * Resistance that a long charge meets over one read from a step of one to ten seconds, which most meters and
 * chargers do. Fitted on measured charges of six datasets (tests/outside/charge-runs.ts); those whose time hangs on
 * it ask for 1.5 to 2.5.
 */
export const wholeOverReading = 2.05

/**
 * The circuit of one cell position of `pack` at `temperature_C`. A measured resistance counts as read at that
 * temperature and scales the parts of the chemistry's own.
 */
export function cellOf(pack: Pack, temperature_C: number): Cell {
  const { curve, resistance } = pack.chemistry
  const model = resistance.value
  const whole_ohmAh = model.series_ohmAh + model.fast_ohmAh + model.slow_ohmAh
  const perOhmAh =
    pack.cellResistance_ohm === undefined
      ? resistanceFactor(temperature_C) / pack.capacity_Ah
      : (wholeOverReading * pack.cellResistance_ohm) / whole_ohmAh
  return {
    capacity_Ah: pack.capacity_Ah,
    curve: curve.value,
    series_ohm: model.series_ohmAh * perOhmAh,
    fast: { resistance_ohm: model.fast_ohmAh * perOhmAh, timeConstant_s: model.fast_s },
    slow: { resistance_ohm: model.slow_ohmAh * perOhmAh, timeConstant_s: model.slow_s },
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
