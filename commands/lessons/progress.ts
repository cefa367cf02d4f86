// How far a person has come: which lessons are done, and which comes next.

import { lessons, questionId } from '../../src/handbook/lessons/index.ts'
import type { Lesson, LessonQuestion } from '../../src/handbook/teaching/taught.ts'

export interface Progress {
  /** Of the lesson's questions, how many were answered right once. */
  right(lesson: Lesson): number
  isDone(lesson: Lesson): boolean
  /** The first that is not done; the first of all where all are. */
  readonly next: Lesson
  readonly done: number
  /** What the lesson still has to ask; empty where it is done. */
  open(lesson: Lesson): readonly LessonQuestion[]
}

export function progressOf(learned: readonly string[]): Progress {
  const known = new Set(learned)
  const open = (lesson: Lesson) => lesson.questions.filter(question => !known.has(questionId(lesson, question)))
  const isDone = (lesson: Lesson) => open(lesson).length === 0
  return {
    open,
    isDone,
    right: lesson => lesson.questions.length - open(lesson).length,
    next: lessons.find(lesson => !isDone(lesson)) ?? lessons[0],
    done: lessons.filter(isDone).length,
  }
}
