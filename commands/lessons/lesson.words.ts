// A lesson and its questions in words, with the buttons that lead on.

import type { FollowUp } from '../../src/assistant/reply.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { type DrawnQuestion, letterOf } from '../../src/handbook/teaching/asking.ts'
import type { Lesson } from '../../src/handbook/teaching/taught.ts'
import { followUp } from '../shared/next.ts'

/** "Lesson 2 of 8, The C-rate". */
export const lessonTitle = (lesson: Lesson, locale: Locale): Text => {
  const { say, show } = locale
  const at = show.number(lessons.indexOf(lesson) + 1, 0)
  return say`Lesson ${at} of ${show.number(lessons.length, 0)}, ${lesson.title(locale)}`
}

export const readLesson = (label: Text, { key }: Lesson): FollowUp => followUp(label, 'lesson read', { lesson: key })
export const askLesson = (label: Text, { key }: Lesson): FollowUp => followUp(label, 'lesson ask', { lesson: key })

/** The choices with their letters, and how to answer. */
export function questionLines({ choices, wanted, right }: DrawnQuestion, { say, own }: Locale): readonly Text[] {
  if (!choices) return [say`Answer with ${wanted}, as in: lesson answer ${own(likeBut(right))}`]
  return [
    ...choices.map((choice, at) => say`${own(letterOf(at))}) ${choice}`),
    say`Answer with ${wanted}: lesson answer ${own(letterOf(0))}`,
  ]
}

/** A button a choice; a quantity is typed. */
export const answerButtons = ({ choices = [] }: DrawnQuestion, { own }: Locale): readonly FollowUp[] =>
  choices.map((_, at) => followUp(own(letterOf(at)), 'lesson answer', { is: letterOf(at) }))

/** The unit of the answer with another number, which gives nothing away. */
const likeBut = (right: string): string => (/^\d+$/.test(right) ? '12' : right.replace(/[\d.]+/, '1.23'))
