// Decimal numbers: point or comma, and nothing that could be read two ways.

import { problemAt } from '../../ground/plain-text.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { notOneNumber, onlyPlainDecimals, pointAndNoThousands, thousandsOrDecimals } from './scan.words.ts'

const plainNumeral = /^[+-]?(?:\d+(?:[.,]\d+)?|[.,]\d+)$/
const thousands = /^[+-]?[1-9]\d{0,2}(?:,\d{3})+$/

/**
 * The numeral as JavaScript text with a decimal point, ready for an exact power of ten behind it.
 * Throws a Problem for `1,234` (thousands or decimals?) and for more than one separator.
 */
export function decimalText(typed: string, wanted: Wanted): string {
  if (thousands.test(typed)) {
    throw problemAt(typed, thousandsOrDecimals, {
      expected: pointAndNoThousands(wanted.expected),
      example: wanted.example,
    })
  }
  if (!plainNumeral.test(typed)) {
    throw problemAt(typed, notOneNumber, wanted)
  }
  return typed.replace(',', '.')
}

/**
 * `value` times ten to the `shift` in plain decimals, moved as text so that nothing is rounded:
 * reading the text and shifting back gives the very same number.
 */
export function shiftedDecimal(value: number, shift: number): string {
  if (value === 0) return '0'
  if (shift === 0 && Math.abs(value) >= 1e-6 && Math.abs(value) < 1e21) return String(value)
  const [mantissa = '0', exponent = '0'] = Math.abs(value).toExponential().split('e')
  const digits = mantissa.replace('.', '')
  const point = 1 + Number(exponent) + shift
  const whole = point > 0 ? digits.slice(0, point).padEnd(point, '0') : '0'
  const fraction = point > 0 ? digits.slice(point) : `${'0'.repeat(-point)}${digits}`
  const sign = value < 0 ? '-' : ''
  return /[1-9]/.test(fraction) ? `${sign}${whole}.${fraction}` : `${sign}${whole}`
}

const oddNumber = /^[+-]?(?:nan|inf(?:inity)?|∞|0x[\da-f]*|0b[01]+|0o[0-7]+|\d[\d.,]*e[+-]?\d+)(?![\p{L}\d])/iu

/** Why a text that looks like a programmer's number is not read, where it is one. */
export function oddNumberProblem(text: string, wanted: Wanted): Problem | undefined {
  const odd = oddNumber.exec(text)?.[0]
  if (odd === undefined) return undefined
  return problemAt(odd, onlyPlainDecimals, wanted)
}

const grouped = /^[1-9]\d?,\d00$/
const unit = /^ ?(?:v|volts?|a|amps?|ah|w|watts?|wh|c|kg|g|k?m|mm2?|cm|h|hours?|min\w*|s|[%°])(?!\p{L})/iu
const ofCells = /\b(?:cells?|each|volts?|meter)\b/i

/** "Marked 2,200": a comma between thousands, where no unit follows and no cell may stand at so many volts. */
export function isGrouped(text: string, start: number, end: number): boolean {
  const typed = text.slice(start, end)
  if (!grouped.test(typed) || unit.test(text.slice(end, end + longestUnit))) return false
  return !(/^[2-4],/.test(typed) && ofCells.test(text))
}
const longestUnit = 9
