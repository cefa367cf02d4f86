// What shows a number: "the charger says 12.6", "my meter 12.5", "12.6 on the display".

import type { Device } from '../sentence/candidate.ts'
import type { Sentence } from '../sentence/sentence.ts'

const meters = /^(?:(?:multi|volt)?m[eè]t(?:er|re)s?|multimetr\p{L}*|dmm|testers?|checkers?)$/u
const chargers = /^(?:chargers?|displays?|screens?|ladeger\p{L}*|lader|chargeurs?)$/u
const mostBetween = 12

const deviceOf = (word: string): Device | undefined =>
  meters.test(word) ? 'meter' : chargers.test(word) ? 'charger' : undefined

/** Behind the number with "on" or the like, else before it with no other reading between. */
export const deviceOfReading = (sentence: Sentence, first: number, after: number): Device | undefined =>
  behind(sentence, after) ?? before(sentence, first)

function behind(sentence: Sentence, after: number): Device | undefined {
  if (!/^(?:on|by|from|at|per|in)$/.test(sentence.word(after))) return undefined
  for (let at = after + 1; at <= after + 3; at += 1) {
    const device = deviceOf(sentence.word(at))
    if (device) return device
    if (sentence.numerals[at] && !sentence.numerals[at]?.needsUnit) return undefined
  }
  return undefined
}

function before(sentence: Sentence, first: number): Device | undefined {
  for (let at = first - 1; at >= Math.max(0, first - mostBetween); at -= 1) {
    const device = deviceOf(sentence.word(at))
    if (device) return device
    if (/\d[.,]\d/.test(sentence.word(at))) return undefined
  }
  return undefined
}
