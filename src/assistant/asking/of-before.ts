// What only speaks of what was said before: it points at it, pleads against it, or rests on it.

import { opensAsking } from '../../language/conversation/heard/asks-nothing.ts'
import { conceptsIn } from '../../language/model/concepts.ts'
import { knownShare } from '../../language/model/index.ts'
import type { Meant } from '../../language/reading/meant.ts'
import type { KitEntry } from '../../memory/kit.ts'
import type { Known } from './around.ts'

export const asksWhatNow =
  /^\W*(?:(?:and|so|but|ok|then) )*(?:now what|what(?: (?:now|then|else|instead)\b|(?: do| should| can| shall) (?:i|we) do\b))/i

const asksToUse =
  /\b(?:can|may|could|should|shall) (?:i|we) (?:still |just |now )*(?:use|fly|charge|keep) (?:it|them|this|that)\b/i

interface Plea {
  readonly meant: Meant
  readonly text: string
  readonly about: string | undefined
}

/** It asks nothing but what to do then, tells nothing and thanks for nothing. */
export function pleads({ meant: { kind, understanding }, text, about }: Plea): boolean {
  const isIdle = idle.has(kind) || (kind === 'handbook' && about === undefined) || understanding.intent === 'hello'
  return understanding.values.length === 0 && (asksWhatNow.test(text) || asksToUse.test(text))
    ? true
    : isIdle && !understanding.values.some(value => /\d/.test(value.text)) && !opensAsking.test(text) && !thanks(text)
}

const idle: ReadonlySet<string> = new Set(['unclear', 'notours', 'smalltalk'])
const polite: ReadonlySet<string> = new Set(['thanks', 'greeting'])

/** A greeting or thanks are in it. */
export const thanks = (text: string): boolean => conceptsIn(text).some(concept => polite.has(concept))

/** Numbers and names tell of another question than the one before. */
export const namesAnew = (text: string, used: readonly KitEntry[]): boolean => used.length > 0 || /\d/.test(text)

/** Nothing of its own, in words that are all known: it speaks of the answer before. */
export const pointsAt = ({ kind, understanding }: Meant, text: string) =>
  (kind === 'unclear' || kind === 'notours') &&
  understanding.values.length === 0 &&
  knownShare(text) === 1 &&
  pointsBack.test(text)
    ? 'why'
    : undefined

const pointsBack = /\b(?:it|its|this|that|them|they|these|those|he|she)\b/i

/** What the handbook answers of a pack that something was told of rests on that. */
export function ofStanding<K extends Omit<Known, 'question'>>(plain: K, text: string): K {
  const stands = plain.kept.some(({ doubted }) => !doubted) && pointsBack.test(text)
  return stands ? { ...plain, doubts: [...plain.doubts, 'toldBefore'] } : plain
}
