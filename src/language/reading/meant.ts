// What somebody means by a plain sentence: a question that can be answered, one thing to ask back, or something else.

import type { Danger } from '../../charging/situation/dangers.ts'
import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Said } from '../../ground/locale.ts'
import type { Intent } from '../corpus/intents.ts'
import type { Question } from '../sentence/question.ts'
import type { Missing } from './fit.ts'
import type { PackTold } from './told/told-pack.ts'

/** How a sentence was understood, for whoever wants to see it. */
export interface Understanding {
  readonly intent: Intent
  /** How likely it is that this is meant, 0 to 1. */
  readonly likelihood: number
  /** Values with their place in the text. */
  readonly values: readonly {
    readonly kind: string
    readonly text: string
    readonly start: number
    readonly end: number
  }[]
  readonly notUnderstood: readonly string[]
  readonly dangers?: readonly Danger[]
}

export interface MeantQuestion {
  readonly kind: 'question'
  readonly question: Question
  readonly assumed: readonly Said[]
  readonly doubts: readonly Doubt[]
  readonly understanding: Understanding
}

/** One thing is missing: what, and what is known so far. */
export interface MeantInPart {
  readonly kind: 'asks back'
  readonly question: Question
  readonly missing: Missing
  readonly told: PackTold | undefined
  readonly understanding: Understanding
}

/** What may have been meant, and what was told as a question for it, where nothing is missing. */
export interface Near {
  readonly intent: Intent
  readonly question: Question | undefined
}

export interface MeantOther {
  /** The handbook answers, small talk, none of our business, or not clear enough to say. */
  readonly kind: 'handbook' | 'smalltalk' | 'notours' | 'unclear'
  /** The likeliest, for sample questions near to it. */
  readonly near: readonly Near[]
  /** How warm the cells are, in notation, where the question tells. */
  readonly temperature?: string | undefined
  readonly understanding: Understanding
}

export type Meant = MeantQuestion | MeantInPart | MeantOther
