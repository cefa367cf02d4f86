// What is said of the changes in a club.

import type { WordsOf } from '../../src/assistant/command.ts'
import { changedBy } from './change.words.ts'
import type { history } from './history.ts'

export const historyWords: WordsOf<typeof history> = locale => {
  const { say, own } = locale
  return {
    summary: say`Who changed what in this club, and when: its rules, standard answers and kit.`,
    asks: [own('who changed the rules')],
    takes: { about: { about: say`rules, answers or kit; all of them if you say nothing` } },
    answer: ({ changes: [last] }) =>
      last
        ? [say`The last change here: ${changedBy(last, locale)}.`]
        : [say`Nothing is noted that was changed in this club.`],
    figures: { changes: say`latest changes` },
    working: ({ changes }) => changes.slice(1).map(one => say`${changedBy(one, locale)}.`),
  }
}
