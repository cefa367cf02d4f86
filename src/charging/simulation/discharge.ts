// A discharge at a set current, held down by the power the load can turn to heat.

import type { Pack } from '../things/pack.ts'
import { advance, cellOf, innerVoltage, type Moment, restedAt } from './cell.ts'

export interface DischargeRequest {
  readonly pack: Pack
  /** States of charge, 0 to 1, the start above the end. */
  readonly fromSoc: number
  readonly toSoc: number
  readonly current_A: number
  /** Most power that the load takes, in W. */
  readonly power_W?: number
  /** In °C; 25 when absent. */
  readonly temperature_C?: number
}

const steps = 200

/** @throws RangeError where the start is not above the end, or the current not above 0 */
export function simulateDischarge(request: DischargeRequest) {
  const { pack, fromSoc, toSoc, current_A, power_W = Number.POSITIVE_INFINITY, temperature_C = 25 } = request
  if (!(fromSoc > toSoc) || !(current_A > 0) || !(power_W > 0)) {
    throw new RangeError('a discharge needs a start above its end, a current and a power')
  }
  const cell = cellOf(pack, temperature_C)
  const perCell_W = power_W / pack.series
  const drawn_A = (at: Moment) =>
    Math.min(current_A, currentAtPower(innerVoltage(cell, at), cell.series_ohm, perCell_W))
  const rest = restedAt(fromSoc)
  let at: Moment = { ...rest, current_A: -drawn_A(rest) }
  const heldByPower = -at.current_A < current_A
  let energy_Wh = 0
  let lowestPerCell_V = Number.POSITIVE_INFINITY
  for (let step = 0; step < steps; step++) {
    const step_s = ((fromSoc - toSoc) / steps) * (pack.capacity_Ah / -at.current_A) * 3600
    const moved = advance(cell, at, step_s, at.current_A)
    const terminal_V = innerVoltage(cell, moved) + moved.current_A * cell.series_ohm
    energy_Wh += (terminal_V * -at.current_A * step_s * pack.series) / 3600
    lowestPerCell_V = Math.min(lowestPerCell_V, terminal_V)
    at = { ...moved, current_A: -drawn_A(moved) }
  }
  return {
    duration_s: at.time_s,
    /** Out of the pack, in Ah. */
    charge_Ah: (fromSoc - toSoc) * pack.capacity_Ah,
    /** Out of its terminals, in Wh. */
    energy_Wh,
    /** Lowest voltage of one cell under the load, in V. */
    lowestPerCell_V,
    /** Whether the power, and not the set current, holds at the start. */
    heldByPower,
  }
}

/** P = (V - R I) I for one cell; all that it can give where it can never give P. */
function currentAtPower(inner_V: number, series_ohm: number, power_W: number): number {
  if (!Number.isFinite(power_W)) return Number.POSITIVE_INFINITY
  const discriminant = Math.max(0, inner_V ** 2 - 4 * series_ohm * power_W)
  return (2 * power_W) / (inner_V + Math.sqrt(discriminant))
}
