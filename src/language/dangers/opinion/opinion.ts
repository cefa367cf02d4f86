// The second opinion: how likely a text tells any danger, and one of each family.

import { familyPlaces } from './features.ts'
import file from './weights.json' with { type: 'json' }

export interface Opinion {
  /** 0 to 1: that it tells any danger. */
  readonly any: number
  /** 0 to 1, by family. */
  readonly families: readonly number[]
}

/** Logistic weights of whole steps, as a step is worth little and small numbers take little room. */
export interface Weights {
  readonly step: number
  /** Of any danger, then of each family. */
  readonly biases: readonly number[]
  /** For any danger, by place. */
  readonly any: Int8Array
  /** By place folded to fewer, then by family. */
  readonly families: Int8Array
}

/** As they are kept: lists in base 64. */
export interface StoredWeights {
  readonly step: number
  /** With spaces between. */
  readonly biases: string
  readonly any: string
  readonly families: string
}

export function opinionOf(features: ReadonlySet<number>, { step, biases, any, families }: Weights): Opinion {
  const count = biases.length - 1
  const sums = new Float64Array(count)
  let sum = 0
  for (const place of features) {
    sum += any[place] ?? 0
    const from = (place % familyPlaces) * count
    for (let family = 0; family < count; family += 1)
      sums[family] = (sums[family] ?? 0) + (families[from + family] ?? 0)
  }
  const likely = (steps: number, bias = 0): number => 1 / (1 + Math.exp(-(bias + step * steps)))
  return {
    any: likely(sum, biases[0]),
    families: Array.from(sums, (steps, family) => likely(steps, biases[family + 1])),
  }
}

export function readWeights(): Weights {
  const { step, biases, any, families }: StoredWeights = file
  return { step, biases: biases.split(' ').map(Number), any: listOf(any), families: listOf(families) }
}

export const storedWeights = ({ step, biases, any, families }: Weights): StoredWeights => ({
  step,
  biases: biases.join(' '),
  any: base64(any),
  families: base64(families),
})

const base64 = (list: Int8Array): string =>
  Buffer.from(list.buffer, list.byteOffset, list.byteLength).toString('base64')
const listOf = (text: string): Int8Array => Int8Array.from(Buffer.from(text, 'base64'))
