// What is said of a card that was to be moved.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { answerMove } from './answer-move.ts'
import { linkWords, standingWords, titleWords } from './standing-answer.words.ts'

export const answerMoveWords: WordsOf<typeof answerMove> = locale => {
  const { say, own } = locale
  return {
    summary: say`Takes the card of a standard answer to this channel; for moderators.`,
    tells: [own('move the answer Small packs here')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: ({ standing }, { title }) => {
      if (!standing) return [say`The card of "${own(title)}" is in this channel already.`]
      return standing.posted
        ? [say`The card of "${own(title)}" is moved, ${standingWords(standing, locale)}`]
        : [say`The card of "${own(title)}" is left where it was.`, standing.missing?.(locale)]
    },
    figures: {},
    working: ({ standing }) => [standing && linkWords(standing, locale)],
  }
}
