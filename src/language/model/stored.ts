// The file of the trained model: a few numbers, and long lists of small numbers as base64.

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
  const counts = Uint8Array.from(features, (_, place) => (starts[place + 1] ?? 0) - (starts[place] ?? 0))
  return {
    intents,
    temperature,
    unit,
    features: base64(features),
    counts: base64(counts),
    of: base64(of),
    weights: base64(weights),
    words: base64(words),
  }
}

/** Takes about two milliseconds. */
export function readModel({ intents, temperature, unit, ...lists }: StoredModel): Model {
  const counts = new Uint8Array(bytesOf(lists.counts))
  const starts = new Uint32Array(counts.length + 1)
  counts.forEach((count, place) => {
    starts[place + 1] = (starts[place] ?? 0) + count
  })
  return {
    intents,
    temperature,
    unit,
    features: new Uint32Array(bytesOf(lists.features)),
    starts,
    of: new Uint8Array(bytesOf(lists.of)),
    weights: new Int8Array(bytesOf(lists.weights)),
    words: new Uint32Array(bytesOf(lists.words)),
  }
}

const base64 = (list: Uint8Array | Int8Array | Uint32Array): string =>
  Buffer.from(list.buffer, list.byteOffset, list.byteLength).toString('base64')

/** In a buffer of their own: numbers of four bytes must stand where four divides the place. */
const bytesOf = (text: string): ArrayBuffer => new Uint8Array(Buffer.from(text, 'base64')).buffer
