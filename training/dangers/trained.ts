// The weights of the opinion on dangers, by gradient steps in a fixed order: the same corpus and code give the same weights.

import { type Features, featuresOf, fewerPlaces, places } from '../../src/language/dangers/opinion/features.ts'
import { judged, type Weights, weightOf } from '../../src/language/dangers/opinion/opinion.ts'
import { conceptNumbers, ready } from '../../src/language/dangers/reader.ts'
import { figuresIn } from '../../src/language/dangers/relations/figures.ts'
import { valuesOf } from '../../src/language/dangers/relations/values.ts'
import { sharesOf } from '../../src/language/model/model.ts'
import { allExamples, type Example } from './examples.ts'

interface Seen extends Example {
  readonly features: Features
}

const rounds = 20
/** How strongly weights are drawn to nothing, and how fast they learn. */
const pull = 2e-4
const pace = 0.15
/** The largest weight is so many steps: coarse ones take little room. */
const steps = { any: 31, which: 10 } as const
/** What stands as often beside dangers as elsewhere is heard so far. */
const leastHeard = 0.3
/** What stood in fewer messages than about so many says nothing of others. */
const leastOften = 1.9
/** From errors smaller than this nothing is learned. */
const leastError = 3e-3

export function trainedWeights(): Weights {
  const examples = allExamples().map((example, n) => ({ ...example, features: featuresIn(example, n) }))
  const { weights: any, bias } = anyDanger(examples)
  const which = whichDanger(examples.filter(({ dangers }) => dangers.length > 0))
  const [step, whichStep] = [stepOf(any, steps.any), stepOf(which, steps.which)]
  return {
    step,
    bias: Number(bias.toFixed(4)),
    any: Int8Array.from(any, weight => Math.round(weight / step)),
    whichStep,
    which: Int8Array.from(which, weight => Math.round(weight / whichStep)),
  }
}

function featuresIn({ text, isKnownToRules }: Example, n: number): Features {
  const marked = ready.mark(text)
  const isTrusting = !isKnownToRules || n % 2 === 0
  const evidence = isTrusting ? ready.evidenceIn(marked) : []
  return featuresOf(marked, evidence, figuresIn(valuesOf(marked.words)), conceptNumbers)
}

/** In the same order each time, yet no two alike beside each other. */
const inTurn = (examples: readonly Seen[], round: number): readonly Seen[] =>
  examples.map((example, n) => examples[(n * 7919 + round * 31) % examples.length] ?? example)

/** Steps grow smaller where the slopes seen so far, squared and summed, are great. */
class Learned {
  readonly weights: Float64Array
  readonly #slopes: Float64Array

  constructor(size: number) {
    this.weights = new Float64Array(size)
    this.#slopes = new Float64Array(size).fill(1e-3)
  }

  step(at: number, slope: number): void {
    const drawn = slope + pull * (this.weights[at] ?? 0)
    const seen = (this.#slopes[at] ?? 0) + drawn * drawn
    this.#slopes[at] = seen
    this.weights[at] = (this.weights[at] ?? 0) - (pace * drawn) / Math.sqrt(seen)
  }
}

/** What stands much oftener beside dangers than elsewhere, or much seldomer, is heard first; what hardly ever stood, never. */
function lopsided(examples: readonly Seen[]): Float64Array {
  const [beside, elsewhere] = [true, false].map(isDanger => {
    const count = new Float64Array(places)
    for (const { features, dangers, weight } of examples)
      if (dangers.length > 0 === isDanger) for (const at of features.all) count[at] = (count[at] ?? 0) + weight
    const sum = count.reduce((so, one) => so + one, places / 2)
    return { of: (at: number) => count[at] ?? 0, share: (at: number) => ((count[at] ?? 0) + 0.5) / sum }
  }) as [Counted, Counted]
  return Float64Array.from({ length: places }, (_, at) =>
    beside.of(at) + elsewhere.of(at) < leastOften
      ? 0
      : leastHeard + Math.abs(Math.log(beside.share(at) / elsewhere.share(at))),
  )
}

interface Counted {
  readonly of: (at: number) => number
  readonly share: (at: number) => number
}

function anyDanger(examples: readonly Seen[]): { weights: Float64Array; bias: number } {
  const learned = new Learned(places)
  const heard = lopsided(examples)
  let bias = -1
  for (let round = 0; round < rounds; round += 1) {
    for (const { features, dangers, weight } of inTurn(examples, round)) {
      const value = weightOf(features.all)
      let sum = 0
      for (const at of features.all) sum += (learned.weights[at] ?? 0) * (heard[at] ?? 0)
      const error = weight * (1 / (1 + Math.exp(-(bias + value * sum))) - (dangers.length > 0 ? 1 : 0))
      bias -= 0.01 * error
      for (const at of features.all) learned.step(at, error * value * (heard[at] ?? 0))
    }
  }
  return { weights: learned.weights.map((weight, at) => weight * (heard[at] ?? 0)), bias }
}

/** Which one, of messages that tell one. */
function whichDanger(examples: readonly Seen[]): Float64Array {
  const learned = new Learned(fewerPlaces * judged.length)
  const scores = new Float64Array(judged.length)
  for (let round = 0; round < rounds / 2; round += 1) {
    for (const { features, dangers } of inTurn(examples, round)) {
      const value = weightOf(features.telling)
      const from = features.telling.map(place => (place % fewerPlaces) * judged.length)
      scores.fill(0)
      for (const at of from)
        for (let n = 0; n < scores.length; n += 1) scores[n] = (scores[n] ?? 0) + value * (learned.weights[at + n] ?? 0)
      const errors = Array.from(sharesOf(scores, 1), (share, n) => {
        const isTold = dangers.some(danger => danger === judged[n])
        return share - (isTold ? 1 / dangers.length : 0)
      })
      const felt = errors.flatMap((error, n) => (Math.abs(error) < leastError ? [] : [n]))
      for (const at of from) for (const n of felt) learned.step(at + n, (errors[n] ?? 0) * value)
    }
  }
  return learned.weights
}

function stepOf(weights: Float64Array, most: number): number {
  const largest = weights.reduce((so, weight) => Math.max(so, Math.abs(weight)), 1e-9)
  return Number((largest / most).toPrecision(6))
}
