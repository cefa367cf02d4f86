// What was learned is learned once: the same notes of the same pack always tell the same.

import { isAlike, type Learned } from '../things/learned.ts'
import type { Pack } from '../things/pack.ts'
import type { ChargeNote } from './charge-note.ts'
import { learn } from './learn.ts'

interface Known {
  readonly pack: Pack
  readonly learned: Learned | undefined
}

/** As many as a club asks about in an evening. */
const mostKnown = 200
const known = new Map<string, Known>()

/** As `learn`, from memory where these notes were learned from before. */
export function learnedFrom(pack: Pack, notes: readonly ChargeNote[]): Learned | undefined {
  const key = JSON.stringify(notes)
  const before = known.get(key)
  if (before && isAlike(before.pack, pack)) return before.learned
  const learned = learn(pack, notes)
  known.set(key, { pack, learned })
  const [oldest] = known.keys()
  if (known.size > mostKnown && oldest !== undefined) known.delete(oldest)
  return learned
}
