// How far a charge has come at some moment of it.

import { interpolate } from '../things/curve.ts'
import type { Charge } from './charge.ts'

/** State of charge so long after the start; undefined where the charge is over by then. */
export function socAfter({ curve, duration_s }: Charge, after_s: number): number | undefined {
  if (after_s >= duration_s) return undefined
  return interpolate(
    curve.map(({ time_s }) => time_s),
    curve.map(({ soc }) => soc),
    after_s,
  )
}
