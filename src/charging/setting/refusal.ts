// Why something must not be done, as data: the words are chosen where the reply is made.

import type { Target } from '../things/level.ts'
import type { Limit } from './limit.ts'

export type Refusal =
  | { readonly kind: 'damaged cell'; readonly perCell_V: number; readonly damage_V: number }
  | { readonly kind: 'overcharged cell'; readonly perCell_V: number; readonly full_V: number }
  | {
      readonly kind: 'temperature'
      readonly temperature_C: number
      readonly from_C: number
      readonly to_C: number
    }
  | { readonly kind: 'cutoff above full'; readonly cutoffPerCell_V: number; readonly full_V: number }
  | { readonly kind: 'cutoff too low'; readonly cutoffPerCell_V: number; readonly least_V: number }
  | { readonly kind: 'no fitting cutoff'; readonly wanted_V: number; readonly cutoffs_V: readonly number[] }
  | {
      readonly kind: 'cell count'
      readonly series: number
      readonly minSeries: number
      readonly maxSeries: number
    }
  | { readonly kind: 'no balance lead' }
  | {
      readonly kind: 'steps too large'
      readonly smallest_A: number
      readonly limit: Limit
      /** The smallest pack of this kind that the smallest step suits; absent where no capacity would help. */
      readonly smallestCapacity_Ah?: number
    }
  | {
      readonly kind: 'input window'
      /** What the source gives, lowest and highest. */
      readonly gives_V: readonly [number, number]
      readonly minInput_V: number
      readonly maxInput_V: number
    }
  | { readonly kind: 'charged already'; readonly target: Target }
  | { readonly kind: 'source at its floor'; readonly source_V: number; readonly floor_V: number }

export interface Refused {
  readonly verdict: 'do not charge'
  readonly refusal: Refusal
}

export const refuse = (refusal: Refusal): Refused => ({ verdict: 'do not charge', refusal })
