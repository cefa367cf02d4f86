// The two ways to read a sentence: as typed, and with what saved names stand for.

import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import { intentsOf } from '../model/index.ts'
import type { CommandWords, Vocabulary } from '../sentence/vocabulary.ts'
import type { Reading } from './choose.ts'
import { type FreeWords, isOfNamed, outside } from './free-words.ts'

/** Commands about what bears a name read the sentence as typed, all others with what saved names stand for. */
export function readings(text: string, values: readonly Candidate[], { typed, of }: FreeWords, vocabulary: Vocabulary) {
  const isSame = typed === text
  const asTyped = isSame ? values : bestCover(candidatesOf(typed))
  const ofText = intentsOf(text, values)
  const ofTyped = isSame ? ofText : intentsOf(typed, asTyped)
  const named = new Set(vocabulary.filter(isOfNamed).map(({ name }) => name))
  return {
    ranked: ofText
      .map(one => (named.has(one.intent) ? (ofTyped.find(({ intent }) => intent === one.intent) ?? one) : one))
      .toSorted((a, b) => b.share - a.share),
    readBy: (command: CommandWords): Reading => {
      if (!named.has(command.name)) return { values, free: {} }
      const free = of(command)
      return { values: outside(asTyped, free), free }
    },
  }
}
