// Kinds of value that take all the words that follow: a whole question, or text in a person's own words.

import { plainText, quoted, shortened, unquoted } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { atMost, tooLong } from './kinds.words.ts'
import type { ValueKind } from './value-kind.ts'

/** Fits the first lines of a message on every surface, together with a title. */
const longestOwnText = 700

/** A question as typed; whoever asks it finds out what is wrong with it. */
export const questionKind: ValueKind<string> = {
  name: 'question',
  example: 'time pack: 3S 720 LiHV current: 1A',
  read: text => ({ value: plainText(text), assumed: [] }),
  write: question => question,
  complete: () => [],
}

export const textKind: ValueKind<string> = {
  name: 'text',
  example: 'Charge at the bench by the door, never in the car.',
  read: text => {
    const plain = unquoted(plainText(text))
    if (plain.length <= longestOwnText) return { value: plain, assumed: [] }
    throw new Problem({
      what: tooLong(plain.length),
      ...quoted(shortened(plain)),
      expected: atMost(longestOwnText),
      example: `text: ${textKind.example}`,
    })
  },
  write: text => text,
  complete: () => [],
}
