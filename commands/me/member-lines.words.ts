// What is kept about a person, in a line for each kind of record.

import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import type { MemberData } from '../../src/memory/memory.ts'

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

export function memberLines(data: MemberData, locale: Locale): readonly Text[] {
  const { say, show } = locale
  const kinds = kindsOf(locale)
  return (Object.keys(kinds) as (keyof MemberData)[]).map(
    kind => say`${show.number(data[kind].length, 0)}: ${kinds[kind]}`,
  )
}
