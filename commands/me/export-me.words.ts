// What is said of all that is kept about the asker.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { exportMe } from './export-me.ts'
import { memberLines } from './member-lines.words.ts'

export const exportMeWords: WordsOf<typeof exportMe> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`Hands you everything I keep about you; in direct messages.`,
    asks: [own('give me a copy of my data')],
    takes: {},
    answer: ({ kept, count }) => {
      if (!kept) return [say`Ask me this in a direct message: here everybody would read it.`]
      return count > 0
        ? [say`Records that I keep about you: ${show.number(count, 0)}. All of them are here.`]
        : [say`I keep nothing about you.`]
    },
    figures: { records: say`records kept` },
    working: ({ kept }) => (kept ? memberLines(kept, locale) : []),
  }
}
