// Every lesson, in the order in which a newcomer takes them.

import { balance } from './balance.ts'
import { cRate } from './c-rate.ts'
import { cutoff } from './cutoff.ts'
import { label } from './label.ts'
import type { Lesson, LessonQuestion } from './lesson.ts'
import { place } from './place.ts'
import { retire } from './retire.ts'
import { sources } from './sources.ts'
import { storage } from './storage.ts'

export const lessons: readonly [Lesson, ...Lesson[]] = [
  label,
  cRate,
  cutoff,
  balance,
  place,
  storage,
  sources,
  retire,
]

/** As it is kept: "c-rate/amps". */
export const questionId = (lesson: Lesson, { key }: LessonQuestion): string => `${lesson.key}/${key}`

export interface FoundQuestion {
  readonly lesson: Lesson
  readonly question: LessonQuestion
}

/** Undefined for a question that there is no longer. */
export function findQuestion(id: string): FoundQuestion | undefined {
  for (const lesson of lessons) {
    const question = lesson.questions.find(one => questionId(lesson, one) === id)
    if (question) return { lesson, question }
  }
  return undefined
}
