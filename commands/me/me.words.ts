// What is said of all that is kept about the asker.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { MemberData } from '../../src/memory/memory.ts'
import type { exportMe, forgetMe } from './me.ts'

const kindsOf = ({ say }: Locale): Readonly<Record<keyof MemberData, Text>> => ({
  kit: say`saved packs, chargers and sources`,
  answered: say`questions that I answered in a message, to know which answer belongs to which question`,
  reminders: say`reminders that are still to come`,
  waiting: say`questions and answers on their way`,
  log: say`charges noted of your own packs`,
  alone: say`rules and answers that you have set in direct messages`,
  learned: say`questions of the lessons that you have answered right`,
  pending: say`question of a lesson that waits for your answer`,
  changed: say`changes that you made, with your name`,
})

function memberLines(data: MemberData, locale: Locale): readonly Text[] {
  const { say, show } = locale
  const kinds = kindsOf(locale)
  return (Object.keys(kinds) as (keyof MemberData)[])
    .filter(kind => data[kind].length > 0)
    .map(kind => say`${show.number(data[kind].length, 0)}: ${kinds[kind]}`)
}

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
    working: ({ kept }) => [
      ...memberLines(kept, locale),
      say`Messages in the chat stay where they are, and so does what the club shares.`,
      say`Where this question is a message, a note that it was answered stays for 90 days, so that it is not carried out twice.`,
      say`A backup that the host made earlier may still hold it until that backup is thrown away.`,
    ],
  }
}
