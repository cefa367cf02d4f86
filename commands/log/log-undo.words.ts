// What is said of a charge that was taken back.

import type { WordsOf } from '../../src/assistant/command.ts'
import { dayWords } from './log.words.ts'
import type { logUndo } from './log-undo.ts'

export const logUndoWords: WordsOf<typeof logUndo> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Takes back the last charge noted of a saved pack; moderators that of the club's.`,
    takes: { name: { about: say`the name of the saved pack`, as: text => say`the last charge of ${text}` } },
    answer: ({ gone }, { name }) => [
      gone
        ? say`Taken back: the charge of ${dayWords(gone.at, locale)} that put ${show.capacity(gone.charge_Ah)} into ${own(name)}.`
        : say`No charge of ${own(name)} is noted, so nothing was changed.`,
    ],
  }
}
