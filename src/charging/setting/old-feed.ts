// What a source can give a charger's input, or why it cannot feed it.

import type { Charger } from '../things/charger.ts'
import { type HouseLimits, noHouseLimits } from '../things/house-limits.ts'
import type { Source } from '../things/source.ts'
import { type Feed, inputOf } from './input.ts'
import { type Refused, refuse } from './refusal.ts'

export type { Feed }

export interface FeedRequest {
  readonly source: Source
  readonly charger?: Charger
  readonly limits?: HouseLimits
  /** State of charge of a battery source, 0 to 1; full when absent. */
  readonly sourceSoc?: number
}

/** What `source` gives inside the charger's input window, or why it cannot feed it. */
export function feedOf({ limits = noHouseLimits, ...fed }: FeedRequest): Feed | Refused {
  const { feed, gives_V, floor_V = 0 } = inputOf({ ...fed, house: limits })
  if (feed) return feed
  const { minInput_V = 0, maxInput_V = Number.POSITIVE_INFINITY } = fed.charger ?? {}
  const [low_V, high_V] = gives_V
  return low_V > minInput_V && high_V <= maxInput_V && low_V <= floor_V
    ? refuse({ kind: 'source at its floor', source_V: low_V, floor_V })
    : refuse({ kind: 'input window', gives_V, minInput_V, maxInput_V })
}
