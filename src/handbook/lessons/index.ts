// Every lesson, in the order in which a newcomer takes them.

import { type Lesson, type LessonQuestion, taught } from '../teaching/taught.ts'
import { balance } from './balance.ts'
import { balanceWords } from './balance.words.ts'
import { cRate } from './c-rate.ts'
import { cRateWords } from './c-rate.words.ts'
import { cutoff } from './cutoff.ts'
import { cutoffWords } from './cutoff.words.ts'
import { label } from './label.ts'
import { labelWords } from './label.words.ts'
import { place } from './place.ts'
import { placeWords } from './place.words.ts'
import { retire } from './retire.ts'
import { retireWords } from './retire.words.ts'
import { sources } from './sources.ts'
import { sourcesWords } from './sources.words.ts'
import { storage } from './storage.ts'
import { storageWords } from './storage.words.ts'

export const lessons: readonly [Lesson, ...Lesson[]] = [
  taught(label, labelWords),
  taught(cRate, cRateWords),
  taught(cutoff, cutoffWords),
  taught(balance, balanceWords),
  taught(place, placeWords),
  taught(storage, storageWords),
  taught(sources, sourcesWords),
  taught(retire, retireWords),
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
