// Kinds of value that a club tells of itself.

import type { Said } from '../../ground/locale.ts'
import { plainText, shortened, unquoted } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { atMost, hoursWanted, noHours, noPhone, phoneWanted, tooLong } from './kinds.words.ts'
import type { ValueKind } from './value-kind.ts'

/** Two of them and a refusal fit a phone. */
const longest = 60

function clubKind(example: string, readOrThrow: (plain: string) => string): ValueKind<string> {
  return {
    name: 'club words',
    example,
    read: text => ({ value: readOrThrow(unquoted(plainText(text))), assumed: [] }),
    write: value => value,
    complete: () => [],
  }
}

const problem = (what: Said, plain: string, expected: Said, example: string) =>
  new Problem({ what, token: shortened(plain), expected, example })

const place = 'Field lane 3, Newtown'
export const ownWordsKind = clubKind(place, plain => {
  if (plain.length <= longest) return plain
  throw problem(tooLong(plain.length), plain, atMost(longest), place)
})

export const phoneKind = clubKind('112', plain => {
  if (/^\+?\d[\d /-]{1,18}\d$/.test(plain)) return plain
  throw problem(noPhone, plain, phoneWanted, '112')
})

const hours =
  /^(?<from>[01]?\d|2[0-4])(?:[:.](?<fromPast>[0-5]\d))? ?(?:-|to) ?(?<to>[01]?\d|2[0-4])(?:[:.](?<toPast>[0-5]\d))?$/i

export const hoursKind = clubKind('22:00 to 07:00', plain => {
  const told = hours.exec(plain)?.groups
  if (!told) throw problem(noHours, plain, hoursWanted, '22:00 to 07:00')
  const time = (hour = '', past = '00') => `${hour.padStart(2, '0')}:${past}`
  return `${time(told.from, told.fromPast)} to ${time(told.to, told.toPast)}`
})
