// What is said where a question of a lesson is put.

import type { WordsOf } from '../../src/assistant/command.ts'
import { answerButtons, lessonTitle, questionLines, readLesson } from './lesson.words.ts'
import type { lessonAsk } from './lesson-ask.ts'

export const lessonAskWords: WordsOf<typeof lessonAsk> = locale => {
  const { say, own } = locale
  return {
    summary: say`Asks you a question of a lesson, with new values each time.`,
    asks: [own('ask me a question')],
    takes: {
      lesson: {
        about: say`which one; the next that you have not done when not said`,
        as: text => say`a question of the lesson ${text}`,
      },
    },
    answer: ({ lesson, question }) => [say`${lessonTitle(lesson, locale)}. ${question.ask}`],
    figures: {},
    working: ({ question }) => questionLines(question, locale),
    next: ({ lesson, question }) => [...answerButtons(question, locale), readLesson(say`Read the lesson`, lesson)],
  }
}
