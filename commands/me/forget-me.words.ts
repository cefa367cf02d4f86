// What is said before and after all that is kept about the asker is deleted.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { forgetMe } from './forget-me.ts'
import { memberLines } from './member-lines.words.ts'

export const forgetMeWords: WordsOf<typeof forgetMe> = locale => {
  const { say, own } = locale
  return {
    summary: say`Deletes everything I keep about you, once you confirm it.`,
    asks: [own('delete everything about me')],
    takes: { confirm: { about: say`the word ${own('forget')}; without it I only say what would go` } },
    answer: (_, { confirm }) => [
      confirm
        ? say`I have deleted everything that I kept about you.`
        : say`This would delete everything that I keep about you. To do it, write: ${own('forget me confirm: forget')}`,
    ],
    figures: {},
    working: ({ kept }) => [
      ...memberLines(kept, locale),
      say`Messages in the chat stay where they are, and so does what the club shares.`,
      say`Where this question is a message, a note that it was answered stays for 90 days, so that it is not carried out twice.`,
      say`A backup that the host made earlier may still hold it until that backup is thrown away.`,
    ],
  }
}
