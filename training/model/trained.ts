// The model, from the corpus to the last byte.

import { candidatesOf } from '../../src/language/candidates/index.ts'
import { intents } from '../../src/language/corpus/intents.ts'
import { type Model, scoresOf } from '../../src/language/model/model.ts'
import { stored } from '../../src/language/model/stored.ts'
import { condensed, sharedWords } from './condense.ts'
import type { Example } from './examples.ts'
import { bestTemperature, type Guessed } from './judged.ts'
import { learn } from './learner.ts'

/** Learned from these; its temperature is not set. */
export const modelOf = (examples: readonly Example[]): Model =>
  condensed(learn(examples, intents.length), sharedWords(examples), intents.length)
export const guessedBy = (model: Model, examples: readonly Example[]): readonly Guessed[] =>
  examples.map(example => ({ example, scores: scoresOf(model, example.text, candidatesOf(example.text)) }))

/** Learned from all but the people held out, who only say how sure it may be. */
export function trained(all: readonly Example[]): Model {
  const model = modelOf(all.filter(({ isHeldOut }) => !isHeldOut))
  const others = all.filter(({ isHeldOut }) => isHeldOut)
  return { ...model, temperature: bestTemperature(guessedBy(model, others)) }
}

/** The text of its file. */
export const fileOf = (model: Model): string => `${JSON.stringify(stored(model), undefined, 2)}\n`
