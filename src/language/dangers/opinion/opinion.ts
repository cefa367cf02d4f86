// The second opinion: how likely a text tells any danger, and one of each family.

import { readFileSync } from 'node:fs'
import { brotliCompressSync, brotliDecompressSync } from 'node:zlib'

export interface Opinion {
  /** 0 to 1: that it tells any danger. */
  readonly any: number
  /** 0 to 1, by family. */
  readonly families: readonly number[]
}

/** Weights of one question each: the first asks for any danger, the others for one family. */
export interface Weights {
  /** How much one step of a weight counts. */
  readonly step: number
  readonly biases: readonly number[]
  /** By place, then by question. */
  readonly steps: Int8Array
}

export function opinionOf(features: ReadonlySet<number>, { step, biases, steps }: Weights): Opinion {
  const questions = biases.length
  const sums = new Float64Array(questions)
  for (const place of features) {
    const from = place * questions
    for (let question = 0; question < questions; question += 1)
      sums[question] = (sums[question] ?? 0) + (steps[from + question] ?? 0)
  }
  const likely = biases.map((bias, question) => 1 / (1 + Math.exp(-(bias + step * (sums[question] ?? 0)))))
  return { any: likely[0] ?? 0, families: likely.slice(1) }
}

interface Kept {
  readonly step: number
  readonly biases: readonly number[]
  /** Packed, in base 64. */
  readonly steps: string
}

export function readWeights(): Weights {
  const kept: Kept = JSON.parse(readFileSync(new URL('weights.json', import.meta.url), 'utf8'))
  const steps = new Int8Array(brotliDecompressSync(Buffer.from(kept.steps, 'base64')))
  return { step: kept.step, biases: kept.biases, steps }
}

/** The weights as they are kept. */
export const writeWeights = ({ step, biases, steps }: Weights): Kept => ({
  step,
  biases,
  steps: brotliCompressSync(Buffer.from(steps.buffer)).toString('base64'),
})
