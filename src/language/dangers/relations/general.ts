// Whether a message asks about a danger in general: its cause, its signs, what keeps it away.

import type { Told } from './relation.ts'
import type { Value } from './values.ts'

/**
 * "How do I keep packs from swelling", "why must one not charge in bed": such a question tells no danger. Not where
 * something of somebody's own is spoken of or more is said, nor where the reason is asked for what somebody means to do.
 */
export function asksInGeneral({ marked, values, has }: Told): boolean {
  if (marked.words.slice(1).some(({ cut }) => cut > 0)) return false
  const isReason = has('asksReason') && !has('doer')
  const isOfLimits = isReason && !marked.words.some(({ w }) => pointing.test(w))
  const isPlain = ({ kind, value }: Value) =>
    kind === 'chemistry' || kind === 'count' || (isOfLimits && value >= limits_V.least && value <= limits_V.most)
  if (has('ownThing') || !values.every(isPlain)) return false
  return has('asksAbout') || isReason
}
/** Volts where cells are full: "why is 4.20 the limit and not 4.25". */
const limits_V = { least: 4.1, most: 4.4 }
const pointing = /^(?:it|its|this|that|these|they|one|reads?|says?|shows?|now)$/
