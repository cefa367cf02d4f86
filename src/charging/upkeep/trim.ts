// A charger's cutoff against a trusted meter: how far it is off, and what to set so that no cell passes its limit.

import type { Cited } from '../things/chemistry.ts'

/** A charger this near is left as it is, in V per cell. */
export const trimTolerance_V: Cited = {
  value: 0.02,
  standing: 'common practice',
  source: 'a charger within 0.02 V per cell of a good meter is left as it is',
}

/** A charger this far off is faulty, in V per cell. */
export const faultyFrom_V: Cited = {
  value: 0.1,
  standing: 'common practice',
  source: 'a charger more than 0.1 V per cell off is not trimmed but taken out of use',
}

export type TrimVerdict = 'within tolerance' | 'charges high' | 'charges low' | 'faulty'

export interface Trim {
  /** Measured less shown, per cell: above zero the cells get more than the charger says. */
  readonly error_V: number
  readonly verdict: TrimVerdict
}

/** Both in V per cell, at the end of a charge. */
export function judgeTrim(shown_V: number, measured_V: number): Trim {
  const error_V = Number((measured_V - shown_V).toFixed(6))
  const off_V = Math.abs(error_V)
  if (off_V > faultyFrom_V.value) return { error_V, verdict: 'faulty' }
  if (off_V <= trimTolerance_V.value) return { error_V, verdict: 'within tolerance' }
  return { error_V, verdict: error_V > 0 ? 'charges high' : 'charges low' }
}

/**
 * The highest setting, in V per cell to a hundredth, at which no cell gets more than `limit_V` from a charger
 * that is off by `error_V`. A charger that charges low is not made up for: the setting is never above the limit.
 */
export const highestSetting_V = (limit_V: number, error_V: number): number =>
  Math.floor((limit_V - Math.max(0, error_V)) * 100 + 1e-6) / 100
