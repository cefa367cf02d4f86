// What a lesson is: what it shows, an example worked out by the core, and questions whose values are drawn; and, apart
// from it, its words.

import type { HouseLimits } from '../../charging/things/house-limits.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { Draw } from './draw.ts'

export type QuantityName = 'voltage' | 'current' | 'rate' | 'energy' | 'count'

/** Asks for a quantity, in its base unit, that may be off by the tolerance. */
export interface DrawnQuantity {
  readonly quantity: QuantityName
  readonly value: number
  readonly tolerance: number
}

/** Asks for one of a few things, in the order in which they are shown. */
export interface DrawnChoice<C> {
  readonly choices: readonly C[]
  readonly right: C
}

// biome-ignore lint/suspicious/noExplicitAny: what is chosen among differs from question to question.
export type Drawn = DrawnQuantity | DrawnChoice<any>
export type Questions = Readonly<Record<string, (draw: Draw, house: HouseLimits) => Drawn>>

/** What is computed for a lesson. Keys are kept with a person's progress, so they never change. */
export interface LessonData<T, E, Q extends Questions> {
  /** Short, lower case. */
  readonly key: string
  /** The numbers that its sentences show. */
  teach(house: HouseLimits): T
  /** Every number of its example. */
  example(house: HouseLimits): E
  /** By their keys, in the order in which they are asked. */
  readonly questions: Q
}

export const lessonData = <T, E, const Q extends Questions>(data: LessonData<T, E, Q>): LessonData<T, E, Q> => data

/** A question in words. */
export type Put<D extends Drawn> =
  D extends DrawnChoice<infer C>
    ? { readonly ask: Text; readonly why: Text; readonly choice: (choice: C) => Text }
    : {
        readonly ask: Text
        /** How the right answer comes about. */
        readonly why: Text
        /** The unit, and how near the answer must be: "amps, within 2 %". */
        readonly wanted: Text
      }

export interface LessonWords<T, E, Q extends Questions> {
  readonly title: Text
  /** The most important sentence first. */
  readonly teach: (taught: T) => readonly [Text, ...Text[]]
  readonly example: (example: E) => Text
  readonly questions: { readonly [K in keyof Q]: (drawn: ReturnType<Q[K]>) => Put<ReturnType<Q[K]>> }
}

export type WordsOf<L> =
  L extends LessonData<infer T, infer E, infer Q> ? (locale: Locale) => LessonWords<T, E, Q> : never
