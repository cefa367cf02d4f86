// What stands between quotes, and the words of a name as they follow something.

import { isNameShaped, nameForm } from '../kit/kit-name.ts'
import words from './joining-words.json' with { type: 'json' }

/** An apostrophe within a word opens and closes nothing. */
const quoted = /"([^"]+)"|(?<![\p{L}\d])'((?:[^']|(?<=\p{L})'(?=\p{L}))+)'(?!\p{L})/gu

/** In plain text: there all quotes are of one kind. */
export const quotesIn = (plain: string): readonly string[] =>
  [...plain.matchAll(quoted)].map(([, double = '', single = '']) => (double || single).trim())

/** Words that no name begins with, and that end one. */
export const joints: ReadonlySet<string> = new Set(words)
const piece = /^\s*"?(\p{L}[\p{L}\p{M}\p{N}'-]*|\d+(?![\p{L}\d.,:]))"?/u
const mostWords = 3
/** "Pack Fern" is called Fern; in "pack 2" the word is of the name. */
const what = /^\s*(?:pack|battery|lipo|charger|supply) +"?\p{L}/iu

/** The name that a text begins with; a number behind it is hung on, as no word of a name is one. */
export function nameAt(text: string): string | undefined {
  const words: string[] = []
  let rest = text
  for (let found = piece.exec(rest); found && words.length < mostWords; found = piece.exec(rest)) {
    const [whole, word = ''] = found
    const isJoint = joints.has(word.toLowerCase()) || (words.length === 0 && what.test(rest))
    if (isJoint && words.length > 0) break
    if (!isJoint) words.push(word)
    rest = rest.slice(whole.length)
    // What follows a comma or a full stop is another thing.
    if (/^\s*[^\s\p{L}\d]/u.test(rest)) break
  }
  const name = nameForm(words.join(' ').replace(/ (?=\d)/g, '-'))
  return isNameShaped(name) ? name : undefined
}
