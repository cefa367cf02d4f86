// Times of day: `14:30`, `9:00`, `9:00 am`, a day before them, and the hour alone of which half of the day was not said.

import { plainText, problemAt } from '../../ground/plain-text.ts'
import { aTimeOfDay, notAClock } from './quantity.words.ts'

export const weekdays = ['monday', 'tuesday', 'wednesday', 'thursday', 'friday', 'saturday', 'sunday'] as const
const relative = ['today', 'tonight', 'tomorrow'] as const
type Day = (typeof weekdays)[number] | (typeof relative)[number]

export interface Clock {
  readonly day?: Day
  /** 0 to 24, and the minutes; undefined where only a day was said. */
  readonly hour?: number
  readonly minute?: number
  /** Of an hour that both halves of the day have: it was said which is meant. */
  readonly isSure?: true
}

const days: readonly Day[] = [...weekdays, ...relative]
const whole = /^(?:(\p{L}{3,9})(?: |$))?(?:(\d{1,2})(?::([0-5]\d))?(?: ?([ap])\.?m\.?)?)?$/iu

/** Throws a Problem for what is neither a time nor a day. */
export function readClock(text: string): Clock {
  const plain = plainText(text)
  const [, named, hour, minute, half] = whole.exec(plain) ?? []
  const day = days.find(one => named !== undefined && one.startsWith(named.toLowerCase()))
  const isDay = named === undefined || day !== undefined
  const isTime = Number(hour ?? 0) <= 24 && (hour === undefined || (minute ?? half) !== undefined)
  if (isDay && isTime && (named ?? hour) !== undefined) {
    return hour === undefined ? { day } : { day, ...clockOf(hour, Number(minute ?? 0), halfOf(half)) }
  }
  throw problemAt(plain, notAClock, { expected: aTimeOfDay, example: '14:30' })
}

export type Half = 'am' | 'pm'
const halfOf = (letter: string | undefined): Half | undefined =>
  letter === undefined ? undefined : letter.toLowerCase() === 'a' ? 'am' : 'pm'

/** Of an hour as it is written: a nought before it is of a clock of 24 hours. */
export function clockOf(written: string, minute: number, half?: Half): Clock {
  const told = Number(written)
  const hour = half === 'pm' && told < 12 ? told + 12 : half === 'am' && told === 12 ? 0 : told
  const isSure = half !== undefined || /^0\d/.test(written)
  return isSure && ofBoth(hour) ? { hour, minute, isSure } : { hour, minute }
}

const ofBoth = (hour: number): boolean => hour >= 1 && hour <= 12

/** Whether it may be of either half of the day. */
export const isOpen = ({ hour = 0, isSure }: Clock): boolean => !isSure && ofBoth(hour)

const day_s = 24 * 3600

const secondsOf = ({ hour = 0, minute = 0 }: Clock): number => hour * 3600 + minute * 60

/** How long from one time to the next such other: by which half of the day the sooner, where both may be of either. */
export function lengthBetween_s(start: Clock, end: Clock): number {
  const whole_s = secondsOf(end) - secondsOf(start)
  const isSure = whole_s > 0 && !(isOpen(start) && isOpen(end))
  const wrap_s = isSure ? day_s : day_s / 2
  return (whole_s + day_s) % wrap_s || wrap_s
}

/** The time of day so much later, or earlier; whole minutes, and no later than that. */
export function clockAfter(clock: Clock, later_s: number): Clock {
  const minutes = Math.floor((((secondsOf(clock) + later_s) % day_s) + day_s) / 60) % (day_s / 60)
  return { hour: Math.floor(minutes / 60), minute: minutes % 60 }
}

/** Canonical text; reading it gives the same time. */
export const writeClock = ({ day, hour, minute = 0, isSure }: Clock): string =>
  [
    day,
    hour === undefined ? undefined : `${hour}:${String(minute).padStart(2, '0')}`,
    isSure && (hour === 12 ? 'pm' : 'am'),
  ]
    .filter(part => part !== undefined)
    .join(' ')
