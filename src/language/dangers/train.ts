// Trains the second opinion on the corpus, without the authors that are held out, and on sentences of our own.

import { readdirSync, readFileSync, writeFileSync } from 'node:fs'
import type { Danger } from '../../charging/situation/dangers.ts'
import { families } from './opinion/families.ts'
import { featuresOf, places } from './opinion/features.ts'
import { type Weights, writeWeights } from './opinion/opinion.ts'
import { conceptNumbers, ready } from './reader.ts'

/** Kept out of all training: figures are taken on them. */
export const heldOutAuthors: ReadonlySet<number> = new Set([5, 8, 12, 16, 22, 26, 30, 32])

interface Marked {
  readonly text: string
  readonly dangers: readonly Danger[]
}

interface Example {
  readonly features: readonly number[]
  /** 1 or 0 by question: any danger, then each family. */
  readonly wanted: readonly number[]
}

const rounds = 20
const pull = 1e-2
const pace = 0.25

/** Trains anew and writes the weights; the same corpus gives the same weights. */
export function trainDangers(): void {
  const weights = weightsFrom([...corpus(), ...ownSentences()].map(exampleOf))
  writeFileSync(
    new URL('opinion/weights.json', import.meta.url),
    `${JSON.stringify(writeWeights(weights))}\n`,
  )
}

function corpus(): Marked[] {
  const folder = new URL('../corpus/', import.meta.url)
  const files = readdirSync(folder)
    .filter(name => /^author-\d+\.jsonl$/.test(name))
    .sort()
  const trained = files.filter(name => !heldOutAuthors.has(Number(name.match(/\d+/)?.[0])))
  return trained.flatMap(name =>
    readFileSync(new URL(name, folder), 'utf8')
      .split('\n')
      .filter(line => line.trim() !== '')
      .map(line => JSON.parse(line) as Marked),
  )
}

function ownSentences(): Marked[] {
  const marked: Marked[] = []
  let dangers: Danger[] = []
  for (const line of readFileSync(new URL('training/sentences.txt', import.meta.url), 'utf8').split('\n')) {
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

/** Logistic weights by gradient steps that grow smaller where there were many, in a fixed order. */
function weightsFrom(examples: readonly Example[]): Weights {
  const questions = families.length + 1
  const weights = new Float64Array(places * questions)
  const seen = new Float64Array(places * questions).fill(1e-3)
  const biases = new Float64Array(questions).fill(-1)
  for (let round = 0; round < rounds; round += 1) {
    for (let n = 0; n < examples.length; n += 1) {
      const example = examples[(n * 7919 + round * 31) % examples.length]
      if (example !== undefined) learn(example, { weights, seen, biases, questions })
    }
  }
  return rounded(weights, biases)
}

interface Learning {
  readonly weights: Float64Array
  readonly seen: Float64Array
  readonly biases: Float64Array
  readonly questions: number
}

function learn({ features, wanted }: Example, { weights, seen, biases, questions }: Learning): void {
  const scale = 1 / Math.sqrt(features.length)
  for (let question = 0; question < questions; question += 1) {
    let sum = biases[question] ?? 0
    for (const place of features) sum += weights[place * questions + question] ?? 0
    const error = 1 / (1 + Math.exp(-sum)) - (wanted[question] ?? 0)
    biases[question] = (biases[question] ?? 0) - 0.01 * error
    for (const place of features) {
      const at = place * questions + question
      const old = weights[at] ?? 0
      const slope = error * scale + pull * old
      const total = (seen[at] ?? 0) + slope * slope
      seen[at] = total
      weights[at] = old - (pace * 0.1 * slope) / Math.sqrt(total)
    }
  }
}

function rounded(weights: Float64Array, biases: Float64Array): Weights {
  let largest = 1e-9
  for (const weight of weights) largest = Math.max(largest, Math.abs(weight))
  const step = Number((largest / 127).toPrecision(6))
  const steps = new Int8Array(weights.length)
  for (let at = 0; at < weights.length; at += 1) steps[at] = Math.round((weights[at] ?? 0) / step)
  return { step, biases: [...biases].map(bias => Number(bias.toFixed(4))), steps }
}
