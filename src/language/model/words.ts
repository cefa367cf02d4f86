// The words of a text, numbers and what is glued to them aside.

import { longestText, plainText } from '../../ground/plain-text.ts'
import { folded } from './clauses.ts'

const word = /(?<![\p{L}\d])\p{L}[\p{L}']*(?![\p{L}\d])/gu

/** As a word is looked up: in lower case, without accents and apostrophes. */
export const lookedUp = (text: string): string => folded(text).replaceAll("'", '')
export const wordsOf = (text: string): readonly string[] =>
  (plainText(text.slice(0, longestText)).match(word) ?? []).map(lookedUp)
