// The known name that an unknown one was probably meant to be.

import { closest, distance } from 'fastest-levenshtein'

/** Undefined where nothing is near: more than about a third of the shorter one's letters would have to change. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined
  const best = closest(name.slice(0, 40), [...known])
  return distance(name.slice(0, 40), best) <= Math.ceil(Math.min(name.length, best.length) / 3) ? best : undefined
}
