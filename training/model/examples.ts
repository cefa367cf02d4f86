// What the model learns from: the messages of the corpus, as features and the intents they are marked with.

import { commands } from '../../commands/index.ts'
import { english } from '../../src/ground/locale.ts'
import { candidatesOf } from '../../src/language/candidates/index.ts'
import { type Intent, intents } from '../../src/language/corpus/intents.ts'
import { features } from '../../src/language/model/features.ts'
import { authors, furtherMessages, heldOut, heldOutFurther, messagesOf } from '../corpus/read-corpus.ts'

export interface Example {
  /** Who wrote it; those of further messages follow the authors. */
  readonly person: number
  /** Of a further person, who was asked for what is seldom asked. */
  readonly isFurther: boolean
  /** Nothing is learned from it: how well people are read is measured on it. */
  readonly isHeldOut: boolean
  readonly text: string
  /** Places in the list of intents. */
  readonly intent: number
  readonly also?: number
  /** Weights by the hash of the feature. */
  readonly features: ReadonlyMap<number, number>
}

const placeOf = (intent: Intent): number => intents.indexOf(intent)

/** What help shows of each command is read as just that. */
const helped = () =>
  commands.flatMap(({ name, words }) =>
    (words(english('.')).asks ?? []).map(text => ({
      person: 0,
      isHeldOut: false,
      text,
      intent: name as Intent,
      also: undefined,
    })),
  )

/** All of them: of the files in their order, then of help. */
export function allExamples(): readonly Example[] {
  const marked = authors.flatMap(person =>
    messagesOf(person).map(({ text, intent, also }) => ({
      person,
      isHeldOut: heldOut.has(person),
      text,
      intent,
      also,
    })),
  )
  const further = furtherMessages().map(({ person, text, intent }) => ({
    person: authors.length + person,
    isHeldOut: heldOutFurther.has(person),
    text,
    intent,
    also: undefined,
  }))
  return [...marked, ...further, ...helped()].map(({ person, isHeldOut, text, intent, also }) => ({
    person,
    isHeldOut,
    isFurther: person > authors.length,
    text,
    intent: placeOf(intent),
    also: also && placeOf(also),
    features: featuresOf(text),
  }))
}

export function featuresOf(text: string): ReadonlyMap<number, number> {
  const found = new Map<number, number>()
  features(text, candidatesOf(text), (feature, weight) => {
    found.set(feature, Math.max(weight, found.get(feature) ?? 0))
  })
  return found
}
