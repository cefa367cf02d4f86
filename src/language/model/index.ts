// What somebody may want, most likely first, by a small model learned from what club members write.

import { type Candidate, candidatesOf } from '../candidates/index.ts'
import { type Intent, intents } from '../corpus/intents.ts'
import { conceptsOf } from './concepts.ts'
import { hashOf } from './hash.ts'
import file from './model.json' with { type: 'json' }
import { type Model, placeIn, scoresOf, sharesOf } from './model.ts'
import { readModel } from './stored.ts'
import { lookedUp, wordsOf } from './words.ts'

export interface Ranked {
  readonly intent: Intent
  /** How likely it is what was meant, 0 to 1. */
  readonly share: number
}

let loaded: Model | undefined

/** Unpacked once, when first needed. */
function model(): Model {
  loaded ??= readModel(file)
  return loaded
}

/**
 * All intents, most likely first; their shares sum to 1. `candidates` are the values found in the same text.
 * Never throws.
 */
export function intentsOf(text: string, candidates: readonly Candidate[] = candidatesOf(text)): readonly Ranked[] {
  const shares = sharesOf(scoresOf(model(), text, candidates), model().temperature)
  return intents
    .map((intent, index) => ({ intent, share: shares[index] ?? 0 }))
    .sort((one, other) => other.share - one.share)
}

/** Whether members of a club write this word, or it tells something of the trade. */
export const isKnownWord = (word: string): boolean => isKnown(lookedUp(word))
const isKnown = (word: string): boolean => placeIn(model().words, hashOf(word)) >= 0 || conceptsOf(word).length > 0

/** The share of the words, numbers aside, that are known: 0 to 1; 1 where there are none. */
export function knownShare(text: string): number {
  const words = wordsOf(text)
  return words.length === 0 ? 1 : words.filter(isKnown).length / words.length
}
