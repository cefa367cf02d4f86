// What is said of a standard answer that was changed.

import type { WordsOf } from '../../src/assistant/command.ts'
import { undoLine } from '../shared/undo.words.ts'
import type { answerEdit } from './answer-edit.ts'
import { questionWords, textWords, titleWords } from './standing-answer.words.ts'

export const answerEditWords: WordsOf<typeof answerEdit> = locale => {
  const { say, own } = locale
  return {
    summary: say`Changes a standard answer and its card; for moderators.`,
    tells: [own('edit the answer Small packs: never in the car')],
    takes: {
      title: titleWords(locale, say`the title it has`),
      'new-title': { about: say`the title it gets`, as: text => say`now "${text}"` },
      question: questionWords(locale),
      text: textWords(locale),
    },
    answer: ({ title, isThere, hasCard }, { title: asked }) => {
      if (!isThere) return [say`The standard answer "${own(asked)}" has just been removed, so nothing was changed.`]
      return hasCard
        ? [say`The standard answer "${own(title)}" is changed, and so is its card.`]
        : [say`The standard answer "${own(title)}" is changed; it has no card now.`]
    },
    figures: {},
    working: () => [undoLine(locale)],
  }
}
