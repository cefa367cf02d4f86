// The second opinion on dangers, trained on the corpus without the people held out, and on sentences of our own.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Danger } from '../../src/charging/situation/dangers.ts'
import { families } from '../../src/language/dangers/opinion/families.ts'
import { familyPlaces, featuresOf, places } from '../../src/language/dangers/opinion/features.ts'
import type { Weights } from '../../src/language/dangers/opinion/opinion.ts'
import { conceptNumbers, ready } from '../../src/language/dangers/reader.ts'
import { authors, heldOut, messagesOf } from '../corpus/read-corpus.ts'

interface Marked {
  readonly text: string
  readonly dangers: readonly Danger[]
}

interface Example {
  readonly features: readonly number[]
  /** 1 or 0: any danger, then each family. */
  readonly wanted: readonly number[]
}

const rounds = 20
/** How strongly weights are drawn to nothing, and how fast they learn. */
const pull = 1e-2
const pace = 0.025

/** The same corpus and the same code give the same weights. */
export function trainedWeights(): Weights {
  const seen = authors.filter(author => !heldOut.has(author)).flatMap(author => messagesOf(author))
  return weightsFrom([...seen, ...ownSentences()].map(exampleOf))
}

function ownSentences(): Marked[] {
  const marked: Marked[] = []
  let dangers: Danger[] = []
  for (const line of readFileSync(join(import.meta.dirname, 'sentences.txt'), 'utf8').split('\n')) {
    if (line.startsWith('# ')) dangers = line === '# none' ? [] : [line.slice(2) as Danger]
    else if (line !== '') marked.push({ text: line, dangers })
  }
  return marked
}

function exampleOf({ text, dangers }: Marked): Example {
  const features = [...featuresOf(ready.mark(text), conceptNumbers)]
  const byFamily = families.map(family => (dangers.some(danger => family.includes(danger)) ? 1 : 0))
  return { features, wanted: [dangers.length > 0 ? 1 : 0, ...byFamily] }
}

/** One question's weights while it learns. */
interface Question {
  readonly weights: Float64Array
  /** Slopes seen so far, squared and summed: where there were many, steps grow smaller. */
  readonly slopes: Float64Array
  bias: number
}

const question = (size: number): Question => ({
  weights: new Float64Array(size),
  slopes: new Float64Array(size).fill(1e-3),
  bias: -1,
})

/** Logistic weights by gradient steps in a fixed order. */
function weightsFrom(examples: readonly Example[]): Weights {
  const any = question(places)
  const byFamily = families.map(() => question(familyPlaces))
  for (let round = 0; round < rounds; round += 1) {
    for (let n = 0; n < examples.length; n += 1) {
      const { features, wanted } = examples[(n * 7919 + round * 31) % examples.length] ?? { features: [], wanted: [] }
      learn(any, features, wanted[0] ?? 0)
      for (const [family, asked] of byFamily.entries()) learn(asked, features, wanted[family + 1] ?? 0)
    }
  }
  return rounded(any, byFamily)
}

function learn(asked: Question, features: readonly number[], wanted: number): void {
  const { weights, slopes } = asked
  const size = weights.length
  let sum = asked.bias
  for (const place of features) sum += weights[place % size] ?? 0
  const error = 1 / (1 + Math.exp(-sum)) - wanted
  asked.bias -= 0.01 * error
  const scale = error / Math.sqrt(features.length)
  for (const place of features) {
    const at = place % size
    const weight = weights[at] ?? 0
    const slope = scale + pull * weight
    const seen = (slopes[at] ?? 0) + slope * slope
    slopes[at] = seen
    weights[at] = weight - (pace * slope) / Math.sqrt(seen)
  }
}

function rounded(any: Question, byFamily: readonly Question[]): Weights {
  let largest = 1e-9
  for (const { weights } of [any, ...byFamily])
    for (const weight of weights) largest = Math.max(largest, Math.abs(weight))
  const step = Number((largest / 127).toPrecision(6))
  const inSteps = (weight: number): number => Math.round(weight / step)
  const count = byFamily.length
  const folded = new Int8Array(familyPlaces * count)
  for (const [family, { weights }] of byFamily.entries()) {
    for (let place = 0; place < familyPlaces; place += 1) folded[place * count + family] = inSteps(weights[place] ?? 0)
  }
  const biases = [any, ...byFamily].map(({ bias }) => Number(bias.toFixed(4)))
  return { step, biases, any: Int8Array.from(any.weights, inSteps), families: folded }
}
