// How well a model reads messages that it did not learn from.

import { sharesOf } from '../../src/language/model/model.ts'
import type { Example } from './examples.ts'

/** An example with the scores that a model gives it. */
export interface Guessed {
  readonly example: Example
  readonly scores: Float64Array
}

/** Intents, most likely first. */
export const rankedOf = ({ scores }: Guessed): readonly number[] =>
  [...scores.keys()].sort((one, other) => (scores[other] ?? 0) - (scores[one] ?? 0))

/** Whether this is what the message is marked with, first or second. */
export const fits = ({ intent, also }: Example, guess: number | undefined): boolean =>
  guess === intent || guess === also

/** The share of messages of which one of the likeliest `within` intents fits. */
export const hitShare = (guessed: readonly Guessed[], within: number): number =>
  guessed.filter(guess =>
    rankedOf(guess)
      .slice(0, within)
      .some(intent => fits(guess.example, intent)),
  ).length / guessed.length

/** How surprised the model is by the marks, in nats a message: less is better. */
export function surprise(guessed: readonly Guessed[], temperature: number): number {
  const sum = guessed.reduce((total, { example, scores }) => {
    const share = sharesOf(scores, temperature)[example.intent] ?? 0
    return total - Math.log(Math.max(share, 1e-12))
  }, 0)
  return sum / guessed.length
}

/** The temperature, of two decimals, at which shares are the likelihoods that they say they are. */
export function bestTemperature(guessed: readonly Guessed[]): number {
  let best = 1
  for (let hundredths = 20; hundredths <= 300; hundredths += 1) {
    const tried = hundredths / 100
    if (surprise(guessed, tried) < surprise(guessed, best)) best = tried
  }
  return best
}
