// A charger: the currents it offers and the limits of its output, its input and its balancer.

/** Either a short list of currents, or every multiple of an increment between two ends. Rising, in A. */
export type CurrentSteps =
  | { readonly kind: 'list'; readonly steps_A: readonly number[] }
  | { readonly kind: 'range'; readonly from_A: number; readonly to_A: number; readonly increment_A: number }

export interface Charger {
  readonly currents: CurrentSteps
  /** Highest output power, in W. */
  readonly power_W?: number
  /** Cell counts it charges. */
  readonly minSeries?: number
  readonly maxSeries?: number
  /** Input voltage window, in V. */
  readonly minInput_V?: number
  readonly maxInput_V?: number
  /** Output power over input power, 0.5 to 1. */
  readonly efficiency?: number
  /** Current its balancer can bleed from one cell, in A. */
  readonly balance_A?: number
  /** It starts only when it sees a balance lead. */
  readonly needsBalanceLead?: boolean
  /** Cutoff voltages per cell that it can be set to, in V; unknown when absent. */
  readonly cutoffs_V?: readonly number[]
}
