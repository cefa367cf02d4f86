// Durations: hours, minutes and seconds with their units, down to `1h20`.

import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { decimalText, shiftedDecimal } from '../scan/number.ts'
import { colonUnclear, durationOutside, durationRange, needsUnit, notADuration } from './quantity.words.ts'

const longest_s = 366 * 24 * 3600
const wanted: Wanted = { expected: durationRange, example: '1h20' }

/** Of each part of a duration, in s. */
const lengths = { weeks: 604_800, days: 86_400, hours: 3600, minutes: 60, seconds: 1 }
const part = (name: keyof typeof lengths, units: string): string =>
  String.raw`(?:(?<${name}>\d+(?:[.,]\d+)*) ?(?:${units}))?`
const whole = new RegExp(
  `^${[
    part('weeks', 'weeks?|wks?'),
    part('days', 'days?|d'),
    part('hours', 'hours?|hrs?|h'),
    part('minutes', 'minutes?|mins?|m'),
    part('seconds', 'seconds?|secs?|s'),
  ].join(' ?')}$`,
  'i',
)
const hoursAndMinutes = /^(?<hours>\d{1,3}) ?h ?(?<minutes>[0-5]?\d)$/i

/** s, 1 to a year of 366 days: `1h20`, `1 h 20 min`, `45 min`, `90s`, `1.5h`. Throws a Problem; `1:20` is ambiguous. */
export function readDuration(text: string): number {
  const plain = plainText(text)
  const parts = hoursAndMinutes.exec(plain) ?? whole.exec(plain)
  if (!parts?.[0]) throw problem(plain)
  const duration_s = Object.entries(lengths).reduce(
    (sum, [name, length_s]) => sum + Number(decimalText(parts.groups?.[name] ?? '0', wanted)) * length_s,
    0,
  )
  if (duration_s >= 1 && duration_s <= longest_s) return duration_s
  throw problemAt(plain, durationOutside, wanted)
}

/** Canonical text; reading it gives the same value. */
export function writeDuration(duration_s: number): string {
  if (!Number.isInteger(duration_s)) return `${shiftedDecimal(duration_s, 0)}s`
  const hours = Math.floor(duration_s / 3600)
  const minutes = Math.floor((duration_s % 3600) / 60)
  const seconds = duration_s % 60
  const parts = [hours > 0 && `${hours}h`, minutes > 0 && `${minutes}min`, seconds > 0 && `${seconds}s`]
  return parts.filter(Boolean).join('')
}

function problem(plain: string): Problem {
  const what =
    plain === ''
      ? nothingThere
      : /^\d+:\d/.test(plain)
        ? colonUnclear
        : /^[\d.,]+$/.test(plain)
          ? needsUnit
          : notADuration
  return problemAt(plain, what, wanted)
}
