// Durations: hours, minutes and seconds with their units, down to `1h20`.

import { plainText, quoted, shortened } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import { Problem } from '../../ground/problem.ts'
import { decimalText, shiftedDecimal, type Wanted } from '../scan/number.ts'
import { colonUnclear, durationOutside, durationRange, needsUnit, notADuration } from './quantity.words.ts'

const longest_s = 7 * 24 * 3600
const wanted: Wanted = { expected: durationRange, example: '1h20' }

const number = String.raw`(\d+(?:[.,]\d+)*)`
const whole = new RegExp(
  `^(?:${number} ?(?:h|hrs?|hours?))? ?(?:${number} ?(?:min|mins|minutes?|m))? ?(?:${number} ?(?:s|secs?|seconds?))?$`,
  'i',
)
const hoursAndMinutes = /^(\d{1,3}) ?h ?([0-5]?\d)$/i

/** s, 1 to 604800: `1h20`, `1 h 20 min`, `45 min`, `90s`, `1.5h`. Throws a Problem; `1:20` is ambiguous. */
export function readDuration(text: string): number {
  const plain = plainText(text)
  const parts = hoursAndMinutes.exec(plain) ?? whole.exec(plain)
  if (!parts?.[0]) throw problem(plain)
  const [, hours = '0', minutes = '0', seconds = '0'] = parts
  const duration_s =
    Number(decimalText(hours, wanted)) * 3600 +
    Number(decimalText(minutes, wanted)) * 60 +
    Number(decimalText(seconds, wanted))
  if (duration_s >= 1 && duration_s <= longest_s) return duration_s
  throw new Problem({
    what: durationOutside,
    token: shortened(plain),
    ...wanted,
  })
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
  return new Problem({ what, ...quoted(plain), ...wanted })
}
