// The trained model: a weight for each feature and intent that it speaks for or against, and the words it knows.

import type { Candidate } from '../candidates/index.ts'
import { features } from './features.ts'

/** A list of numbers for each feature, kept end to end. */
export interface Model {
  /** Divides the scores before they become shares: learned on people whom nothing else was learned from. */
  readonly temperature: number
  /** What a weight of 1 stands for. */
  readonly unit: number
  readonly intents: number
  /** Hashes of the features, rising. */
  readonly features: Uint32Array
  /** Where the weights of a feature begin; one more, where the last end. */
  readonly starts: Uint32Array
  /** For each weight, of which intent it is, and the weight. */
  readonly of: Uint16Array
  readonly weights: Int8Array
  /** Hashes of the words that are known, rising. */
  readonly words: Uint32Array
}

/** Where a number stands in a rising list, or -1. */
export function placeIn(rising: Uint32Array, sought: number): number {
  let [low, high] = [0, rising.length - 1]
  while (low <= high) {
    const middle = (low + high) >> 1
    const found = rising[middle] ?? 0
    if (found === sought) return middle
    if (found < sought) low = middle + 1
    else high = middle - 1
  }
  return -1
}

/** The length that the features of every text are brought to, so that long texts are as sure as short ones. */
export const length = 4

/** Scores of all intents, any size and sign, in the order of the intents. */
export function scoresOf(model: Model, text: string, candidates: readonly Candidate[]): Float64Array {
  const counted = new Map<number, number>()
  features(text, candidates, (feature, weight) => {
    const place = placeIn(model.features, feature)
    if (place >= 0) counted.set(place, Math.max(weight, counted.get(place) ?? 0))
  })
  const scores = new Float64Array(model.intents)
  let squares = 0
  for (const [place, weight] of counted) {
    squares += weight * weight
    const end = model.starts[place + 1] ?? 0
    for (let at = model.starts[place] ?? 0; at < end; at += 1) {
      const intent = model.of[at] ?? 0
      scores[intent] = (scores[intent] ?? 0) + weight * (model.weights[at] ?? 0)
    }
  }
  const scale = (length * model.unit) / (Math.sqrt(squares) || 1)
  return scores.map(score => score * scale)
}

/** Shares of a whole, from scores. */
export function sharesOf(scores: Float64Array, temperature: number): Float64Array {
  const most = scores.reduce((one, other) => Math.max(one, other), Number.NEGATIVE_INFINITY)
  const powers = scores.map(score => Math.exp((score - most) / temperature))
  const sum = powers.reduce((one, other) => one + other, 0)
  return powers.map(power => power / sum)
}
