// Kinds of value that take all the words that follow: a whole question, or text in a person's own words.

import { plainText, problemAt, unquoted } from '../../ground/plain-text.ts'
import { atMost, tooLong } from './kinds.words.ts'
import { wordsKind } from './value-kind.ts'

/** Fits the first lines of a message on every surface, together with a title. */
const longestOwnText = 700

/** A question as typed; whoever asks it finds out what is wrong with it. */
export const questionKind = wordsKind({
  name: 'question',
  example: 'time pack: 3S 720 LiHV current: 1A',
  read: plainText,
})

export const textKind = wordsKind({
  name: 'text',
  example: 'Charge at the bench by the door, never in the car.',
  read: text => {
    const plain = unquoted(plainText(text))
    if (plain.length <= longestOwnText) return plain
    const example = `text: ${textKind.example}`
    throw problemAt(plain, tooLong(plain.length), { expected: atMost(longestOwnText), example })
  },
})
