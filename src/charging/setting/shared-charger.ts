// One charger for several packs together: what it gives them, which of its limits holds, and for how many it is enough.

import type { Bounds } from './bounds.ts'
import type { Limit } from './limit.ts'

/** A step of a charger may lie this much below a limit and still be it, in A. */
const tolerance_A = 1e-9

/** What charger and source can give, whatever is connected; smallest first. */
const givenBy = ({ limits }: Pick<Bounds, 'limits'>): readonly Limit[] =>
  limits.filter(({ rate_C }) => rate_C === undefined)

/** The limit of charger or source that lies below a current; undefined where they give it. */
export const heldBelow = (bounds: Pick<Bounds, 'limits'>, wanted_A: number): Limit | undefined =>
  givenBy(bounds).find(({ value_A }) => value_A < wanted_A - tolerance_A)

export interface Room {
  /** Packs that get the current at once; 0 where not even one does. */
  readonly count: number
  /** For each, in A. */
  readonly each_A: number
  /** What one more pack would pass. */
  readonly limit: Limit
}

/** For how many packs at `each_A` it is enough; undefined where nothing bounds that. */
export function roomFor(bounds: Pick<Bounds, 'limits'>, each_A: number): Room | undefined {
  const [limit] = givenBy(bounds)
  return limit && { count: Math.floor((limit.value_A + tolerance_A) / each_A), each_A, limit }
}
