// The file of the trained model: a few numbers, and long lists of small numbers packed.

import { packed, unpacked } from '../../ground/packed.ts'
import type { Model } from './model.ts'

export interface StoredModel {
  readonly intents: number
  readonly temperature: number
  readonly unit: number
  readonly features: string
  /** How many weights each feature has. */
  readonly counts: string
  readonly of: string
  readonly weights: string
  readonly words: string
}

export function stored({ intents, temperature, unit, features, starts, of, weights, words }: Model): StoredModel {
  const counts = Uint16Array.from(features, (_, place) => (starts[place + 1] ?? 0) - (starts[place] ?? 0))
  return {
    intents,
    temperature,
    unit,
    features: packed(steps(features)),
    counts: packed(counts),
    of: packed(of),
    weights: packed(weights),
    words: packed(steps(words)),
  }
}

/** Takes a few milliseconds. */
export function readModel({ intents, temperature, unit, ...lists }: StoredModel): Model {
  const counts = new Uint16Array(unpacked(lists.counts))
  const starts = new Uint32Array(counts.length + 1)
  counts.forEach((count, place) => {
    starts[place + 1] = (starts[place] ?? 0) + count
  })
  return {
    intents,
    temperature,
    unit,
    features: rising(lists.features),
    starts,
    of: new Uint16Array(unpacked(lists.of)),
    weights: new Int8Array(unpacked(lists.weights)),
    words: rising(lists.words),
  }
}

/** A rising list as the steps between its numbers, which pack better. */
export const steps = (list: Uint32Array): Uint32Array => list.map((number, at) => number - (list[at - 1] ?? 0))

export function rising(text: string): Uint32Array {
  let sum = 0
  return new Uint32Array(unpacked(text)).map(step => {
    sum += step
    return sum
  })
}
