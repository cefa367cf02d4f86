// A charger's cutoff against a trusted meter: how far it is off, and what to set so that no cell passes its limit.

import { practice } from '../things/cited.ts'
import { cutoffStepDown_V } from '../things/practice.ts'

/** A charger this near is left as it is, in V per cell. */
export const trimTolerance_V = practice(0.02, 'a charger within 0.02 V per cell of a good meter is left as it is')

/** A charger this far off is faulty, in V per cell. */
export const faultyFrom_V = practice(0.1, 'a charger more than 0.1 V per cell off is not trimmed but taken out of use')
type Trim = 'within tolerance' | 'charges low' | 'charges high'

/** How a charger is off whose cells read `measured_V` where it shows `shown_V`, both in V per cell, at the end of a charge. */
export function trimOf({ shown_V, measured_V }: { readonly shown_V: number; readonly measured_V: number }) {
  const error_V = Number((measured_V - shown_V).toFixed(6))
  const kind: Trim =
    Math.abs(error_V) <= trimTolerance_V.value ? 'within tolerance' : error_V > 0 ? 'charges high' : 'charges low'
  return { error_V, kind }
}

/**
 * The highest setting, in V per cell to a hundredth, at which no cell gets more than `limit_V` from a charger
 * that is off by `error_V`. A charger that charges low is not made up for: the setting is never above the limit.
 */
export const highestSetting_V = (limit_V: number, error_V: number): number =>
  Math.floor((limit_V - Math.max(0, error_V)) * 100 + 1e-6) / 100

export interface Choice {
  /** What the charger offers, in V per cell. */
  readonly cutoffs_V: readonly number[]
  readonly wanted_V: number
  /** The most that the cells may get, in V. */
  readonly full_V: number
  /** What they get above what the charger shows, in V. */
  readonly error_V: number
}

/** What the cells get where `set_V` is shown; a charger that charges low is not counted on. */
export const got_V = (set_V: number, error_V: number): number => set_V + Math.max(0, error_V)

/** The nearest cutoff at or below the wanted one that is worth a charge, or the next above it within full; undefined where there is neither. */
export function chosenCutoff_V({ cutoffs_V, wanted_V, full_V, error_V }: Choice): number | undefined {
  const allowed_V = Math.min(wanted_V, full_V)
  const below = cutoffs_V.filter(set_V => {
    const missed_V = allowed_V - got_V(set_V, error_V)
    return missed_V >= -1e-9 && missed_V <= cutoffStepDown_V.value + 1e-9
  })
  if (below.length > 0) return Math.max(...below)
  // Only a wish below full leaves room for one above it.
  const above = cutoffs_V.filter(set_V => set_V > wanted_V && got_V(set_V, error_V) <= full_V + 1e-9)
  return above.length > 0 ? Math.min(...above) : undefined
}
