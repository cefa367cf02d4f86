// Whether a message asks about a danger in general: its cause, its signs, what keeps it away.

import type { Told } from './relation.ts'

/**
 * "How do I keep packs from swelling", "why must one not charge in bed": such a question tells no danger. Not where
 * something of somebody's own is spoken of or more is said, nor where the reason is asked for what somebody means to do.
 */
export function asksInGeneral({ marked, values, has }: Told): boolean {
  if (marked.words.slice(1).some(({ cut }) => cut > 0)) return false
  if (has('ownThing') || values.some(({ kind }) => kind !== 'chemistry' && kind !== 'count')) return false
  return has('asksAbout') || (has('asksReason') && !has('doer'))
}
