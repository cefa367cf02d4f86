// The known name that an unknown one was probably meant to be.

import { closest, distance } from 'fastest-levenshtein'

/** Undefined where nothing is near: more than a third of the letters, and more than one, would have to change. */
export function nearest(name: string, known: readonly string[]): string | undefined {
  if (known.length === 0) return undefined
  const best = closest(name.slice(0, 40), [...known])
  return distance(name.slice(0, 40), best) <= Math.max(1, Math.floor(best.length / 3)) ? best : undefined
}
