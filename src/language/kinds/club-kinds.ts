// Kinds of value that a club tells of itself.

import { plainText, problemAt, unquoted } from '../../ground/plain-text.ts'
import { cityOf, readZone, zones } from '../quantities/zone.ts'
import { atMost, hoursWanted, noHours, noPhone, phoneWanted, tooLong } from './kinds.words.ts'
import { plainKind, type ValueKind, wordsKind } from './value-kind.ts'

/** Two of them and a refusal fit a phone. */
const longest = 60

const clubKind = (example: string, read: (plain: string) => string) =>
  wordsKind({ name: 'club words', example, read: text => read(unquoted(plainText(text))) })

const place = 'Field lane 3, Newtown'
export const ownWordsKind = clubKind(place, plain => {
  if (plain.length <= longest) return plain
  throw problemAt(plain, tooLong(plain.length), { expected: atMost(longest), example: place })
})

export const phoneKind = clubKind('112', plain => {
  if (/^\+?\d[\d /-]{1,18}\d$/.test(plain)) return plain
  throw problemAt(plain, noPhone, { expected: phoneWanted, example: '112' })
})

const hours =
  /^(?<from>[01]?\d|2[0-4])(?:[:.](?<fromPast>[0-5]\d))? ?(?:-|to) ?(?<to>[01]?\d|2[0-4])(?:[:.](?<toPast>[0-5]\d))?$/i

export const hoursKind = clubKind('22:00 to 07:00', plain => {
  const told = hours.exec(plain)?.groups
  if (!told) throw problemAt(plain, noHours, { expected: hoursWanted, example: '22:00 to 07:00' })
  const time = (hour = '', past = '00') => `${hour.padStart(2, '0')}:${past}`
  return `${time(told.from, told.fromPast)} to ${time(told.to, told.toPast)}`
})

const mostZones = 25

/** By the zone or by its city: "vie" begins "Europe/Vienna". */
const zonesFor = (prefix: string): readonly string[] => {
  const start = prefix.trim().toLowerCase().replaceAll('_', ' ')
  const begins = (text: string) => text.toLowerCase().replaceAll('_', ' ').startsWith(start)
  return zones.filter(zone => begins(zone) || begins(cityOf(zone))).slice(0, mostZones)
}

export const zoneKind: ValueKind<string> = {
  ...plainKind('time zone', readZone, zone => zone, ['Europe/Vienna']),
  complete: zonesFor,
}
