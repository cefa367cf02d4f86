// What is said of the lessons, and of how far somebody has come.

import type { WordsOf } from '../../src/assistant/command.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { readLesson } from './lesson.words.ts'
import type { lessonList } from './lesson-list.ts'

export const lessonListWords: WordsOf<typeof lessonList> = locale => {
  const { say, show, own } = locale
  const count = (value: number) => show.number(value, 0)
  return {
    summary: say`Lists the lessons for newcomers, and how far you have come.`,
    asks: [own('show me the lessons')],
    takes: {},
    answer: ({ progress: { done, next } }) => [
      done === lessons.length
        ? say`You have done all ${count(lessons.length)} lessons. Any of them asks anew whenever you like.`
        : say`${count(lessons.length)} lessons, ${count(done)} of them done. Next: ${next.title(locale)}.`,
    ],
    figures: {},
    working: ({ progress }) =>
      lessons.map(
        (lesson, at) =>
          say`${count(at + 1)}. ${lesson.title(locale)} (lesson read ${own(lesson.key)}): ${count(progress.right(lesson))} of ${count(lesson.questions.length)} right`,
      ),
    next: ({ progress: { next } }) => [readLesson(say`Read: ${next.title(locale)}`, next)],
  }
}
