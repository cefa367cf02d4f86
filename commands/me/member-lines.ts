// What is kept about a person, in a line for each kind of record.

import type { MemberData } from '../../src/memory/memory.ts'

const words: Readonly<Record<keyof MemberData, string>> = {
  kit: 'saved packs, chargers and sources',
  answered: 'questions that I answered in a message, to know which answer belongs to which question',
  reminders: 'reminders that are still to come',
  log: 'charges noted of your own packs',
  learned: 'questions of the lessons that you have answered right',
  pending: 'question of a lesson that waits for your answer',
}

export function memberLines(data: MemberData): readonly string[] {
  return (Object.keys(words) as (keyof MemberData)[]).map(kind => `${data[kind].length}: ${words[kind]}`)
}
