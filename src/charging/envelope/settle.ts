// Several judgements as one: of what was told, and of every deed that an answer has somebody do.

import type { Pack } from '../things/pack.ts'
import { byWeight, type Found, type Judgement, type RuleKey, type Verdict, verdictOf } from './judge.ts'

export interface Settled {
  /** All packs that were judged. */
  readonly packs: readonly Pack[]
  readonly verdict: Verdict
  readonly found: readonly Found[]
  /** Rules that keep single packs out while others go on. */
  readonly aside: readonly Found[]
}

/** What stands against one pack of several keeps that one out, and the rest is never a plain go. */
export function settle(first: readonly Judgement[], deeds: readonly Judgement[]): Settled {
  const permitted = first.filter(({ verdict }) => verdict !== 'do not charge')
  const kept = permitted.length > 0 ? permitted : first
  const aside = permitted.length > 0 ? first.filter(({ verdict }) => verdict === 'do not charge') : []
  const found = once([...kept, ...deeds].flatMap(judgement => judgement.found))
  const verdict = verdictOf(found)
  return {
    packs: [...first, ...deeds].flatMap(({ situation: { pack } }) => (pack ? [pack] : [])),
    verdict: verdict === 'go' && aside.length > 0 ? 'go with care' : verdict,
    found,
    aside: aside.flatMap(judgement => judgement.found.filter(({ weight }) => weight === 'refuse').slice(0, 1)),
  }
}

/** What speaks against it, or must be known first. */
export const reasonsOf = ({ found, aside }: Settled): readonly RuleKey[] =>
  [...aside, ...found].filter(({ weight }) => weight === 'refuse' || weight === 'must').map(({ key }) => key)

/** Each rule once for each pack, a note once for all: the first that found it, which was told, stands before a later one. */
function once(found: readonly Found[]): readonly Found[] {
  const spoken = new Map<RuleKey, Set<unknown>>()
  return byWeight(found).filter(({ key, weight, known }) => {
    const packs = spoken.get(key) ?? new Set()
    const pack = weight === 'note' ? 'any' : known.situation.pack
    const isFirst = !packs.has(pack)
    spoken.set(key, packs.add(pack))
    return isFirst
  })
}
