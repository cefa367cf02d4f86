// What a lesson is: a few sentences, an example worked out by the core, and questions whose values are drawn.

import type { Refusal } from '../../charging/setting/refusal.ts'
import type { HouseLimits } from '../../charging/things/house-limits.ts'
import type { Pack } from '../../charging/things/pack.ts'
import type { Source } from '../../charging/things/source.ts'
import type { Show } from '../../ground/show.ts'
import type { Draw } from './draw.ts'

/** What the numbers of a lesson depend on: the rules of the house, and how numbers are shown. */
export interface Telling {
  readonly house: HouseLimits
  readonly show: Show
}

/** One question with its values. */
export interface DrawnQuestion {
  readonly ask: string
  /** What an answer looks like, and how near a quantity must be. */
  readonly wanted: string
  /** Answered by their letters or their words. */
  readonly choices?: readonly string[]
  /** A right answer as it would be typed. */
  readonly right: string
  /** How the right answer comes about. */
  readonly why: string
  /** Whether the answer is right. Throws a Problem where it cannot be read. */
  isRight(answer: string): boolean
}

export interface LessonQuestion {
  /** Unique within its lesson. */
  readonly key: string
  draw(draw: Draw, telling: Telling): DrawnQuestion
}

export interface Lesson {
  /** Short, lower case; kept with a person's progress, so it never changes. */
  readonly key: string
  readonly title: string
  /** What it is about, for the choice of its cautions. */
  readonly concerns: {
    readonly pack?: Pack
    readonly source?: Source
    readonly temperature_C?: number
    readonly refusal?: Refusal['kind']
  }
  /** The most important sentence first. */
  teach(telling: Telling): readonly [string, ...string[]]
  /** Every number in it is worked out. */
  example(telling: Telling): string
  readonly questions: readonly [LessonQuestion, ...LessonQuestion[]]
}
