// Which battery of a sentence feeds the others.

import type { Phrase } from './phrases.ts'

const sourceCues = new Set(['from', 'off', 'on', 'using', 'out'])
const weakSourceCues = new Set(['with', 'by'])
const feeding = new Set('charge charges feed fill do power run carry handle give top'.split(' '))
const asking = /^(?:can|could|will|would|does)$/

/** A battery that feeds others is a source: told by the preposition before it or the verb behind it. */
export function withRoles({
  phrases,
  words,
}: {
  readonly phrases: readonly Phrase[]
  readonly words: readonly string[]
}): readonly Phrase[] {
  const packs = phrases.filter(({ kind }) => kind === 'pack')
  const asksWhether = words.some(word => asking.test(word))
  const feeds = ({ cue = '', next = '' }: Phrase) => sourceCues.has(cue) || (asksWhether && feeding.has(next))
  const weakly = ({ cue = '' }: Phrase) => packs.length > 1 && weakSourceCues.has(cue)
  const source = packs.find(feeds) ?? packs.find(weakly)
  return phrases.map(phrase => (phrase === source ? { ...phrase, kind: 'source', pack: true } : phrase))
}
