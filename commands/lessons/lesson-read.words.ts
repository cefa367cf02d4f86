// What is said of one lesson.

import type { WordsOf } from '../../src/assistant/command.ts'
import { lessons } from '../../src/handbook/lessons/index.ts'
import { askLesson, lessonTitle, readLesson } from './lesson.words.ts'
import type { lessonRead } from './lesson-read.ts'

export const lessonReadWords: WordsOf<typeof lessonRead> = locale => {
  const { say } = locale
  return {
    summary: say`A short lesson about charging, with an example worked out.`,
    takes: {
      lesson: {
        about: say`which one; the next that you have not done when not said`,
        as: text => say`the lesson ${text}`,
      },
    },
    answer: ({ lesson, house }) => [say`${lessonTitle(lesson, locale)}. ${lesson.teach({ house, locale })[0]}`],
    figures: {},
    working: ({ lesson, house }) => [
      ...lesson.teach({ house, locale }).slice(1),
      say`Example: ${lesson.example({ house, locale })}`,
    ],
    next: ({ lesson }) => {
      const after = lessons[lessons.indexOf(lesson) + 1]
      return [askLesson(say`Ask me`, lesson), after && readLesson(say`Next: ${after.title(locale)}`, after)]
    },
  }
}
