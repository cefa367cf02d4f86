// Reading and writing one quantity: a number with its unit, inside the range that makes sense.

import type { Said } from '../../ground/locale.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import { Problem, type Wanted } from '../../ground/problem.ts'
import { decimalText, oddNumberProblem, shiftedDecimal } from '../scan/number.ts'
import { type Dimension, type DimensionName, dimensions } from './dimensions.ts'
import { type Measure, measuresAt } from './measures.ts'
import { numeralAt } from './numerals.ts'
import { between, cannotReadAs, dimensionWords, needsUnit, outOfRange } from './quantity.words.ts'
import { Tokens } from './tokens.ts'

/** A narrower range than the dimension's own, in its base unit, and the name to say it of. */
export interface Narrower {
  readonly phrase?: Said
  readonly min?: number
  readonly max?: number
  readonly example?: string
}

/**
 * Reads the whole text as one quantity and gives it in the dimension's base unit (A, V, Ah, Wh, W, Ω, °C, m, kg;
 * a share and a soc as 0 to 1; a rate in C). Throws a Problem that names the token.
 */
export function readQuantity(text: string, dimension: DimensionName, narrower?: Narrower): number {
  const tokens = new Tokens(plainText(text))
  const found = quantityAt(tokens, 0, dimension, narrower)
  if (found?.after === tokens.tokens.length) return found.value
  throw notAQuantity(tokens.text, dimension, narrower)
}

const digits = /[+-]?[\d.,]*\d/y

/** The quantity of a detail that begins at this token, and the token behind it; undefined where there is none of this dimension. */
export function quantityAt(
  tokens: Tokens,
  at: number,
  dimension: DimensionName,
  narrower?: Narrower,
): { readonly value: number; readonly after: number } | undefined {
  const sign = /^[+-]$/.test(tokens.word(at)) && tokens.glued(at + 1) ? tokens.word(at) : ''
  const numeral = numeralAt(tokens, sign === '' ? at : at + 1, false)
  const measure = numeral && measuresAt(tokens, numeral, false).find(one => dimensionOf(one) === dimension)
  digits.lastIndex = tokens.tokens[at]?.start ?? 0
  const typed = digits.exec(tokens.text)?.[0] ?? ''
  if (measure || /[.,].*[.,]/.test(typed)) decimalText(typed === '' ? '0' : typed, wanted(dimension, narrower))
  if (!measure) return undefined
  const value = baseOf(measure, sign)
  return { value: checked(value, tokens.typed(at, measure.after), dimension, narrower), after: measure.after }
}

const dimensionOf = ({ dimension }: Measure) => (dimension === 'fahrenheit' ? 'temperature' : dimension)

/** A converted temperature keeps no more digits than its scale can tell: 28 °F are -2.2 °C. */
function baseOf({ dimension, decimal, value }: Measure, sign: string): number {
  if (dimension === 'share') return Number(`${sign}${decimal}e-2`)
  if (dimension === 'fahrenheit') return Number((((Number(`${sign}${decimal}`) - 32) * 5) / 9).toFixed(1))
  return sign === '-' ? -value : value
}

/** Gives `value` back where it is in range; throws a Problem for `token` where it is not. */
export function checked(value: number, token: string, dimension: DimensionName, narrower?: Narrower): number {
  const { min, max } = { ...dimensions[dimension], ...narrower }
  if (value >= min && value <= max) return value
  const side = value < min ? 'below' : 'above'
  const told = wanted(dimension, narrower)
  // "2200 A": the unit of the label stands behind it. Of what is a part of a thing the whole is the example.
  const thousandth = value / 1000
  const isSlip = narrower?.example === undefined && side === 'above' && thousandth >= min && thousandth <= max
  throw problemAt(token, outOfRange(dimensionWords[dimension].name, side), {
    ...told,
    example: isSlip ? writeQuantity(thousandth, dimension) : told.example,
  })
}

/** Canonical text of a value in its base unit; reading it gives exactly the same value. */
export function writeQuantity(value: number, dimension: DimensionName): string {
  const { written } = dimensions[dimension]
  return `${inUnitWritten(value, dimensions[dimension])}${written}`
}

function inUnitWritten(value: number, dimension: Dimension): string {
  return shiftedDecimal(value, -(dimension.units[dimension.written.toLowerCase()]?.exponent ?? 0))
}

function wanted(name: DimensionName, narrower: Narrower = {}): Wanted {
  const dimension = dimensions[name]
  const { min, max, example } = { ...dimension, ...narrower }
  const shown = (value: number) => inUnitWritten(value, dimension)
  const phrase = narrower.phrase ?? dimensionWords[name].phrase
  return { expected: between(phrase, shown(min), `${shown(max)} ${dimension.written}`), example }
}

function notAQuantity(text: string, dimension: DimensionName, narrower?: Narrower): Problem {
  const expectation = wanted(dimension, narrower)
  const odd = oddNumberProblem(text, expectation)
  if (odd) return odd
  if (text === '') return new Problem({ what: nothingThere, ...expectation })
  const bare = /^[+-]?[\d.,]+$/.test(text)
  if (bare) decimalText(text, expectation)
  const what = bare ? needsUnit : cannotReadAs(dimensionWords[dimension].phrase)
  return problemAt(text, what, expectation)
}
