// Times of day: `14:30`, `9:00`, a day before them, and the hour alone of which half of the day was not said.

import { plainText, quoted } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { aTimeOfDay, notAClock } from './quantity.words.ts'

export const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const
const relative = ['today', 'tonight', 'tomorrow'] as const
export type Day = (typeof weekdays)[number] | (typeof relative)[number]

export interface Clock {
  readonly day?: Day
  /** 0 to 24, and the minutes; undefined where only a day was said. */
  readonly hour?: number
  readonly minute?: number
}

const days: readonly Day[] = [...weekdays, ...relative]
const whole = /^(?:(\p{L}{3,9})(?: |$))?(?:(\d{1,2}):([0-5]\d))?$/u

/** Throws a Problem for what is neither a time nor a day. */
export function readClock(text: string): Clock {
  const plain = plainText(text)
  const [, named, hour, minute] = whole.exec(plain) ?? []
  const day = days.find(one => named !== undefined && one.startsWith(named.toLowerCase()))
  const isDay = named === undefined || day !== undefined
  if (isDay && (named ?? hour) !== undefined && Number(hour ?? 0) <= 24) {
    return hour === undefined ? { day } : { day, hour: Number(hour), minute: Number(minute) }
  }
  throw new Problem({ what: notAClock, ...quoted(plain), expected: aTimeOfDay, example: '14:30' })
}

/** Canonical text; reading it gives the same time. */
export const writeClock = ({ day, hour, minute = 0 }: Clock): string =>
  [day, hour === undefined ? undefined : `${hour}:${String(minute).padStart(2, '0')}`]
    .filter(part => part !== undefined)
    .join(' ')
