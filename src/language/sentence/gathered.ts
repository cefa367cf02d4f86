// Several packs of a sentence as the list that one option takes: `4x 6S 5000 lipo; 2S 450 lipo at 3.8V`.

import type { Phrase } from './phrases.ts'
import type { CommandWords } from './vocabulary.ts'

export const listKinds: ReadonlySet<string> = new Set(['packs', 'session packs'])
const packKinds: ReadonlySet<string> = new Set(['pack', 'cells', 'series', 'chemistry'])
const stateKinds: ReadonlySet<string> = new Set(['level', 'voltage', 'percent'])

/** The packs, each with its count before and its mass or state behind, as one phrase of the list's kind. */
export function gathered(phrases: readonly Phrase[], { options }: CommandWords): readonly Phrase[] {
  const list = options.find(({ kind }) => listKinds.has(kind))
  if (!list || options.some(({ kind }) => kind === 'pack')) return phrases
  const entries: string[] = []
  const others: Phrase[] = []
  for (const [at, phrase] of phrases.entries()) {
    const [before, next] = [phrases[at - 1], phrases[at + 1]]
    const last = entries.length - 1
    if (packKinds.has(phrase.kind)) {
      entries.push(
        before?.kind === 'count' ? `${before.text.replace(/ ?x$/i, '')}x ${phrase.text}` : phrase.text,
      )
    } else if (before && packKinds.has(before.kind) && phrase.kind === 'mass') {
      entries[last] += ` ${phrase.text}`
    } else if (before && packKinds.has(before.kind) && stateKinds.has(phrase.kind) && list.kind !== 'packs') {
      entries[last] += ` at ${phrase.text}`
    } else if (phrase.kind !== 'count' || !next || !packKinds.has(next.kind)) {
      others.push(phrase)
    }
  }
  return entries.length === 0 ? phrases : [{ kind: list.kind, text: entries.join('; ') }, ...others]
}
