// What is said of the changes in a club, and of one that was taken back.

import { whenWords } from '../../src/assistant/cards/cards.words.ts'
import type { WordsOf } from '../../src/assistant/command.ts'
import { changedBy, changeSaid } from './change.words.ts'
import type { history, undo } from './changes.ts'

export const historyWords: WordsOf<typeof history> = locale => {
  const { say, own } = locale
  return {
    summary: say`Who changed what in this club, and when: its rules, standard answers and kit.`,
    asks: [own('who changed the rules'), own('what was changed here lately')],
    takes: { about: { about: say`rules, answers or kit; all of them if you say nothing` } },
    answer: ({ changes: [last] }) =>
      last
        ? [say`The last change here: ${changedBy(last, locale)}.`]
        : [say`Nothing is noted that was changed in this club.`],
    figures: { changes: say`latest changes` },
    working: ({ changes }) => changes.slice(1).map(one => say`${changedBy(one, locale)}.`),
  }
}

export const undoWords: WordsOf<typeof undo> = locale => {
  const { say, own } = locale
  return {
    summary: say`Takes back your own last change, for ten minutes.`,
    tells: [own('take that back')],
    takes: {
      about: { about: say`the last one of rules, answers or kit; of all of them if you say nothing` },
      of: { about: say`the title or name of what was changed` },
    },
    answer: ({ last, isTooOld }) => {
      if (!last) return [say`You have changed nothing here that I could take back.`]
      const said = changeSaid(last.change, locale)
      return isTooOld
        ? [say`Your last change here is older than ten minutes, so I leave it: ${whenWords(last.at, locale)}, ${said}.`]
        : [say`Taken back: ${said}. All is as it was before.`]
    },
    working: () => [say`"history" shows who changed what. Somebody else's change is changed back by hand.`],
  }
}
