// What is said of an answer to the question of a lesson.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { DrawnQuestion } from '../../src/handbook/teaching/asking.ts'
import { followUp } from '../shared/next.ts'
import { askLesson, readLesson } from './lesson.words.ts'
import type { lessonAnswer, Marked } from './lesson-answer.ts'

export const lessonAnswerWords: WordsOf<typeof lessonAnswer> = locale => {
  const { say, own } = locale
  return {
    summary: say`Answers the question of a lesson that was put to you.`,
    takes: {
      is: { about: say`the letter of a choice, or a quantity with its unit`, as: text => say`your answer ${text}` },
    },
    answer: ({ marked }, { is: given }) =>
      marked
        ? [
            marked.isRight ? say`Right.` : say`Not ${own(given)}, but ${solution(marked.question, locale)}.`,
            marked.question.why,
          ]
        : [say`No question waits for your answer. To get one: lesson ask`],
    figures: {},
    working: ({ marked }) =>
      marked ? [say`The question was: ${marked.question.ask}`, progressWords(marked, locale)] : [],
    next: ({ marked }) => (marked ? onward(marked, locale) : [followUp(say`Ask me`, 'lesson ask')]),
  }
}

function solution({ choices, right }: DrawnQuestion, { say, own }: Locale): Text {
  const choice = choices?.[right.charCodeAt(0) - 'a'.charCodeAt(0)]
  return choice === undefined ? own(right) : say`${own(right)}) ${choice}`
}

function progressWords({ lesson, progress }: Marked, locale: Locale): Text {
  const { say, show } = locale
  const count = (value: number) => show.number(value, 0)
  const title = lesson.title(locale)
  return progress.isDone(lesson)
    ? say`You have done the lesson "${title}", ${count(progress.done)} in all.`
    : say`Of the lesson "${title}" you have ${count(progress.right(lesson))} of ${count(lesson.questions.length)} right.`
}

function onward({ lesson, isRight, progress }: Marked, locale: Locale): readonly FollowUp[] {
  const { say } = locale
  const again = askLesson(say`Ask me again`, lesson)
  if (!isRight) return [again, readLesson(say`Read the lesson`, lesson)]
  if (!progress.isDone(lesson)) return [askLesson(say`Next question`, lesson)]
  const { next } = progress
  return progress.isDone(next) ? [again] : [readLesson(say`Next: ${next.title(locale)}`, next)]
}
