// Whether a message only says something, and asks for nothing.

import { isOfNamed } from '../../reading/free-words.ts'
import type { Meant } from '../../reading/meant.ts'
import type { Vocabulary } from '../../sentence/vocabulary.ts'

/** A question mark, or a word that asks in the first place. */
export const opensAsking =
  /\?|^\W*(?:(?:and|so|but|ok|then) )*(?:wh\w+|how|is|are|can|may|should|does|do|did|will|would|could|shall)\b/i

/** It only says something: no details are asked about, and no reason. */
export function asksNothing(meant: Meant, text: string, vocabulary: Vocabulary): boolean {
  if (meant.kind === 'question') {
    const { command, options } = meant.question
    const isOfNames = vocabulary.some(one => one.name === command && isOfNamed(one))
    return Object.keys(options).length === 0 || (isOfNames && !opensAsking.test(text))
  }
  return meant.kind !== 'handbook' || !opensAsking.test(text)
}
