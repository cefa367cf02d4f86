// A lesson and its questions in words, with the buttons that lead on.

import type { Context } from '../../src/assistant/context.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import { letterOf } from '../../src/handbook/lessons/asking.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import type { DrawnQuestion, Lesson, Telling } from '../../src/handbook/lessons/lesson.ts'
import { followUp } from '../shared/follow-up.ts'

export const tellingIn = ({ house, show }: Context): Telling => ({ house, show })

/** "Lesson 2 of 8, The C-rate". */
export const lessonTitle = (lesson: Lesson): string =>
  `Lesson ${lessons.indexOf(lesson) + 1} of ${lessons.length}, ${lesson.title}`

export const readLesson = (label: string, { key }: Lesson): FollowUp =>
  followUp(label, 'lesson read', { lesson: key })

export const askLesson = (label: string, { key }: Lesson): FollowUp =>
  followUp(label, 'lesson ask', { lesson: key })

/** The choices with their letters, and how to answer. */
export function questionLines({ choices = [], wanted, right }: DrawnQuestion): string[] {
  return [
    ...choices.map((choice, at) => `${letterOf(at)}) ${choice}`),
    choices.length > 0
      ? `Answer with ${wanted}: lesson answer a`
      : `Answer with ${wanted}, as in: lesson answer ${likeBut(right)}`,
  ]
}

/** A button a choice; a quantity is typed. */
export const answerButtons = ({ choices = [] }: DrawnQuestion): FollowUp[] =>
  choices.map((_, at) => followUp(letterOf(at), 'lesson answer', { is: letterOf(at) }))

/** The unit of the answer with another number, which gives nothing away. */
const likeBut = (right: string): string => (/^\d+$/.test(right) ? '12' : right.replace(/[\d.]+/, '1.23'))
