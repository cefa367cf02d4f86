// Multinomial logistic regression on few examples of many features. The same examples give the same weights, to
// the bit: the order is fixed, and chance comes from a seed.

import { Descent } from './descent.ts'
import type { Example } from './examples.ts'
import { type Row, rowOf, sharedFeatures } from './rows.ts'

/** Chosen by asking models of three quarters of the people about the others. */
const settings = {
  rounds: 24,
  /** The weights are the mean of as many runs, each with chance of its own. */
  runs: 3,
  rate: 0.3,
  /** Pulls weights back to 0. */
  pull: 0.55,
  /** Of the target, given to all intents alike. */
  smoothing: 0.05,
  /** Of the target, given to the second intent of a message marked with two. */
  second: 0.3,
  /** Features left out at random in a step, so that none is relied on alone. */
  leftOut: 0.4,
  /** 0: each message counts the same; 1: each intent does. */
  evened: 0.5,
  seed: 20250601,
}

export interface Learned {
  /** Hashes of the features, rising. */
  readonly features: Uint32Array
  /** A row for each feature, a column for each intent. */
  readonly weights: Float64Array
}

export function learn(examples: readonly Example[], intents: number): Learned {
  const features = sharedFeatures(examples)
  const rows = examples.map(example => rowOf(example, features))
  const counts = weightsOf(examples, intents)
  const lessons = rows.map((row, at) => ({
    row,
    target: targetOf(examples[at] as Example, intents),
    importance: counts[at] ?? 1,
  }))
  const mean = new Float64Array(features.length * intents)
  for (let run = 0; run < settings.runs; run += 1) {
    const descent = new Descent(features.length, intents, rows, { ...settings, seed: settings.seed + run })
    descend(descent, lessons)
    descent.weights.forEach((weight, at) => {
      mean[at] = (mean[at] ?? 0) + weight / settings.runs
    })
  }
  return { features, weights: mean }
}

function descend(descent: Descent, lessons: Lesson[]): void {
  for (let round = 0; round < settings.rounds; round += 1) {
    descent.shuffle(lessons)
    const rate = settings.rate * (1 - (0.9 * round) / settings.rounds)
    for (const { row, target, importance } of lessons) descent.step(row, target, importance, rate)
  }
}

export interface Lesson {
  readonly row: Row
  readonly target: Float64Array
  readonly importance: number
}

function targetOf({ intent, also }: Example, intents: number): Float64Array {
  const target = new Float64Array(intents).fill(settings.smoothing / intents)
  const rest = 1 - settings.smoothing
  const second = also === undefined ? 0 : settings.second
  target[intent] = (target[intent] ?? 0) + rest * (1 - second)
  if (also !== undefined) target[also] = (target[also] ?? 0) + rest * second
  return target
}

/**
 * Messages of rare intents count more; 1 on average. How often each is asked is told by whole authors: what further
 * people were asked to write much of is not asked the more.
 */
function weightsOf(examples: readonly Example[], intents: number): Float64Array {
  const [all, usual] = [new Float64Array(intents), new Float64Array(intents)]
  for (const { intent, isFurther } of examples) {
    all[intent] = (all[intent] ?? 0) + 1
    if (!isFurther) usual[intent] = (usual[intent] ?? 0) + 1
  }
  const raw = Float64Array.from(
    examples,
    ({ intent }) => (usual[intent] || 1) ** (1 - settings.evened) / (all[intent] ?? 1),
  )
  const mean = raw.reduce((one, other) => one + other, 0) / raw.length
  return raw.map(one => one / mean)
}
