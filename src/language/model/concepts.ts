// What a word is about, slips of the finger forgiven.

import { remembered } from '../../ground/remembered.ts'
import conceptWords from './concept-words.json' with { type: 'json' }
import { wordsOf } from './words.ts'

// In the file a row for each thing that words of the trade tell, so that what is learned of one word holds for all: with
// a star every word that begins so. A word may stand in several rows.
const whole = new Map<string, readonly string[]>()
const beginnings: (readonly [string, string])[] = []
for (const [concept, words] of Object.entries(conceptWords)) {
  for (const word of words.split(' ')) {
    if (word.endsWith('*')) beginnings.push([word.slice(0, -1), concept])
    else whole.set(word, [...(whole.get(word) ?? []), concept])
  }
}

/** Shorter words are too near to others, and longer ones to none. */
const shortestSlip = 6
const longestSlip = Math.max(...[...whole.keys()].map(word => word.length)) + 1
/** Of a word in lower case without accents. */
export const conceptsOf = remembered(5000, conceptsAnew)

export const conceptsIn = (text: string): readonly string[] => wordsOf(text).flatMap(conceptsOf)

function conceptsAnew(word: string): readonly string[] {
  const found = new Set(whole.get(word))
  for (const [beginning, concept] of beginnings) if (word.startsWith(beginning)) found.add(concept)
  if (found.size > 0 || word.length < shortestSlip || word.length > longestSlip) return [...found]
  for (const near of slips(word)) {
    const concepts = whole.get(near)
    if (concepts) return concepts
  }
  return []
}

const letters = 'abcdefghijklmnopqrstuvwxyz'

/** What may have been meant: a letter too many, two swapped, one missing, one wrong. */
function* slips(word: string): Generator<string> {
  for (let at = 0; at < word.length; at += 1) {
    const [before, after] = [word.slice(0, at), word.slice(at + 1)]
    yield before + after
    if (after !== '') yield `${before}${after[0]}${word[at]}${after.slice(1)}`
  }
  for (let at = 0; at <= word.length; at += 1)
    for (const letter of letters) yield word.slice(0, at) + letter + word.slice(at)
  // Hardly anybody mistypes the first letter.
  for (let at = 1; at < word.length; at += 1)
    for (const letter of letters) yield word.slice(0, at) + letter + word.slice(at + 1)
}
