// What only speaks of what was said before: it points at it, pleads against it, or rests on it.

import { opensAsking } from '../../language/conversation/asks-nothing.ts'
import { conceptsIn } from '../../language/model/concepts.ts'
import { knownShare } from '../../language/model/index.ts'
import type { Meant } from '../../language/reading/meant.ts'
import type { KitEntry } from '../../memory/memory.ts'
import type { Known } from './around.ts'

export const asksWhatNow =
  /^\W*(?:(?:and|so|but|ok|then) )*(?:now what|what(?: (?:now|then|else|instead)\b|(?: do| should| can| shall) (?:i|we) do\b))/i

const asksToUse =
  /\b(?:can|may|could|should|shall) (?:i|we) (?:still |just |now )*(?:use|fly|charge|keep) (?:it|them|this|that)\b/i

/** It asks nothing but what to do then, tells nothing and thanks for nothing. */
export const pleads = ({ kind, understanding }: Meant, text: string, about: string | undefined): boolean =>
  (understanding.values.length === 0 && (asksWhatNow.test(text) || asksToUse.test(text))) ||
  ((kind === 'unclear' ||
    kind === 'notours' ||
    kind === 'smalltalk' ||
    (kind === 'handbook' && about === undefined) ||
    understanding.intent === 'hello') &&
    understanding.values.every(value => !/\d/.test(value.text)) &&
    !opensAsking.test(text) &&
    !thanks(text))

const polite: ReadonlySet<string> = new Set(['thanks', 'greeting'])

/** A greeting or thanks are in it. */
export const thanks = (text: string): boolean => conceptsIn(text).some(concept => polite.has(concept))

const afterThanks =
  /^\W*(?:(?:ok(?:ay)?|great|perfect|super|cool)\W+)?(?:many )?(?:thanks?(?: you)?|thx|ta|cheers)\b[^.!?,;]{0,20}[.!,;]+\s*(?=\S+\s+\S)(.+\?)\s*$/is

/** What is asked behind thanks for the answer before. */
export const askedBehind = (text: string): string | undefined => afterThanks.exec(text)?.[1]

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
