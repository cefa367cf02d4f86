// Notes of a pack that do not go with the others: of another pack, of a stopped charge, a slip of the pen.

import type { Traits } from '../things/learned.ts'
import { type Measured, measuredIn, type Telling } from './measured.ts'

/** So far from the middle of all notes, as a logarithm, a value is odd: no sound pack changes so from charge to charge. */
const furthest: Record<Measured['of'], number> = { charge: 0.1, cutoff: 0.25, duration: 0.15, reading: 0.7 }
/** A note alone, or one of two that disagree, is judged beside what cells of its kind may do, in spreads of theirs. */
const mostSpreads = 4

/** How far a value is from what a typical cell would give, and how far that is among cells of the kind. */
interface Off {
  readonly of: Measured['of']
  readonly by: number
  readonly spreads: number
}

/** Indices of the notes that do not go with the others. */
export function oddAmong(telling: readonly Telling[], likely: readonly Traits[]): readonly number[] {
  const offs = telling.map(one => measuredIn(one, likely).map(offOf))
  const odd = telling.filter((_, at) => (offs[at] as Off[]).some(off => isOdd(off, at, offs)))
  return odd.map(({ index }) => index)
}

function offOf({ of, predicted, noted, noise }: Measured): Off {
  const mean = predicted.reduce((sum, one) => sum + one, 0) / predicted.length
  const variance = predicted.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (predicted.length - 1)
  return { of, by: noted - mean, spreads: Math.abs(noted - mean) / Math.sqrt(variance + noise ** 2) }
}

function isOdd({ of, by, spreads }: Off, at: number, all: readonly (readonly Off[])[]): boolean {
  const others = all.flatMap((offs, index) => (index === at ? [] : offs.filter(other => other.of === of)))
  if (others.length === 0) return spreads > mostSpreads
  if (others.length > 1) {
    const sorted = [by, ...others.map(other => other.by)].toSorted((a, b) => a - b)
    return Math.abs(by - (sorted[(sorted.length - 1) >> 1] as number)) > furthest[of]
  }
  // Of two the one that is less like its kind.
  const [other] = others as [Off]
  return Math.abs(by - other.by) > furthest[of] && spreads >= other.spreads
}
