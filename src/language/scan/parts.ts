// A phrase of parts in any order: each reader here tries its parts in turn until the text is used up.

import { nothingThere } from '../../ground/plain-text.words.ts'
import { Problem, type Wanted } from '../../ground/problem.ts'
import { oddNumberProblem } from './number.ts'
import { cannotPlace } from './scan.words.ts'
import type { Scanner } from './scanner.ts'

/** Reads one part where the scanner stands into the draft; false, and not moved, where it is not there. */
export type Part<Draft> = (scan: Scanner, draft: Draft) => boolean

/** Reads parts as long as one fits. */
function takeParts<Draft>(scan: Scanner, parts: readonly Part<Draft>[], draft: Draft): void {
  let end = scan.at
  while (!scan.done) {
    if (!parts.some(part => part(scan, draft))) break
    end = scan.at
    scan.skipGap()
  }
  scan.at = end
}

/** Reads the whole text; throws a Problem that names the first word that is no part. */
export function readParts<Draft>(scan: Scanner, parts: readonly Part<Draft>[], draft: Draft, wanted: Wanted): void {
  if (scan.done) throw new Problem({ what: nothingThere, ...wanted })
  takeParts(scan, parts, draft)
  scan.skipGap()
  if (scan.done) return
  const odd = oddNumberProblem(scan.text.slice(scan.at), wanted)
  throw odd ?? new Problem({ what: cannotPlace(scan.word()), token: scan.word(), ...wanted })
}

/** A part that sets one field, once: a second value is left for the caller to complain of. */
export function once<Draft, K extends keyof Draft>(
  field: K,
  take: (scan: Scanner) => Draft[K] | undefined,
): Part<Draft> {
  return (scan, draft) => {
    if (draft[field] !== undefined) return false
    const value = scan.attempt(() => take(scan))
    if (value === undefined) return false
    draft[field] = value
    return true
  }
}
