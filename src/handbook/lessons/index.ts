// Every lesson, in the order in which a newcomer takes them.

import type { Lesson, LessonQuestion } from '../teaching/lesson.ts'
import { balance } from './balance.words.ts'
import { cRate } from './c-rate.words.ts'
import { cutoff } from './cutoff.words.ts'
import { label } from './label.words.ts'
import { place } from './place.words.ts'
import { retire } from './retire.words.ts'
import { sources } from './sources.words.ts'
import { storage } from './storage.words.ts'

export const lessons: readonly [Lesson, ...Lesson[]] = [label, cRate, cutoff, balance, place, storage, sources, retire]

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
