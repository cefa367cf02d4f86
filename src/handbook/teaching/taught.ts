// Ties a lesson to its words, for whoever reads it or is asked.

import type { HouseLimits } from '../../charging/things/house-limits.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import { type DrawnQuestion, posed } from './asking.ts'
import type { Draw } from './draw.ts'
import type { Drawn, LessonData, LessonWords, Put, Questions } from './lesson.ts'

/** What a lesson depends on: the rules of the club, and the language. */
export interface Telling {
  readonly house: HouseLimits
  readonly locale: Locale
}

export interface LessonQuestion {
  /** Unique within its lesson. */
  readonly key: string
  draw(draw: Draw, telling: Telling): DrawnQuestion
}

export interface Lesson {
  readonly key: string
  title(locale: Locale): Text
  teach(telling: Telling): readonly [Text, ...Text[]]
  example(telling: Telling): Text
  readonly questions: readonly [LessonQuestion, ...LessonQuestion[]]
}

export function taught<T, E, const Q extends Questions>(
  data: LessonData<T, E, Q>,
  words: (locale: Locale) => LessonWords<T, E, Q>,
): Lesson {
  const questions = Object.entries(data.questions).map(([key, drawn]): LessonQuestion => {
    return {
      key,
      draw: (draw, { house, locale }) => {
        const one = drawn(draw, house)
        const put = words(locale).questions[key] as never as (drawn: Drawn) => Put<Drawn>
        return posed(one, put(one), locale)
      },
    }
  })
  return {
    key: data.key,
    title: locale => words(locale).title,
    teach: ({ house, locale }) => words(locale).teach(data.teach(house)),
    example: ({ house, locale }) => words(locale).example(data.example(house)),
    questions: questions as never as Lesson['questions'],
  }
}
