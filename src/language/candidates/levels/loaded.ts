// Volts under load beside volts at rest: "sagged to 2.9 in the climb, now it rests at 3.5". Only the latter say where a pack stands.

import type { Found, Sentence } from '../sentence/sentence.ts'
import { wordSet } from '../sentence/tokens.ts'

const loads = wordSet(
  'sag sags sagged sagging dip dips dipped load throttle punch punched punchout climb climbed climbing flight flying flew air airborne hover wot landed landing takeoff launch loop',
)
const rests = wordSet('rest rests rested resting later after recovered recovers back now sits again hour')
const parting = /^[,.;:]$|^(?:but|then|and|while|now)$/
/** So far from the volts stand the words that say how they were read. */
const reach = 7

/** The volts under load as such, where others are at rest; beside amps they are a measurement and stay. */
export function loadedApart(sentence: Sentence, found: readonly Found[]): readonly Found[] {
  const volts = found.filter(({ kind, text }) => (kind === 'state' || kind === 'voltage') && text.includes('V'))
  const isOf = (words: ReadonlySet<string>) => (one: Found) =>
    wordsAbout(sentence, one, volts).some(word => words.has(word))
  const loaded = volts.filter(isOf(loads))
  const isMeasured = sentence.measures.some(row => row.some(({ dimension }) => dimension === 'current'))
  if (isMeasured || loaded.length === 0 || !volts.some(one => !loaded.includes(one) && isOf(rests)(one))) return found
  return found.map(one => (loaded.includes(one) ? { ...one, kind: 'load', score: 0.95 } : one))
}

/** The words of the same part of the sentence, up to other volts. */
function wordsAbout({ tokens }: Sentence, { first, after }: Found, volts: readonly Found[]): readonly string[] {
  const others = new Set(volts.filter(one => one.first !== first).map(one => one.first))
  const side = (at: number, step: number) => {
    const words: string[] = []
    for (let next = at; words.length < reach; next += step) {
      const word = tokens[next]?.word
      if (word === undefined || parting.test(word) || others.has(next)) break
      words.push(word)
    }
    return words
  }
  return [...side(first - 1, -1), ...side(after, 1)]
}
