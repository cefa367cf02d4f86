// Reading and writing one quantity: a number with its unit, inside the range that makes sense.

import type { Said } from '../../ground/locale.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import { Problem, type Wanted } from '../../ground/problem.ts'
import { decimalText, oddNumberProblem, shiftedDecimal, takeNumeral } from '../scan/number.ts'
import { Scanner } from '../scan/scanner.ts'
import { type Dimension, type DimensionName, dimensions, type Unit } from './dimensions.ts'
import { between, cannotReadAs, dimensionWords, needsUnit, outOfRange } from './quantity.words.ts'

/** A narrower range than the dimension's own, in its base unit, and the name to say it of. */
export interface Narrower {
  readonly phrase?: Said
  readonly min?: number
  readonly max?: number
  readonly example?: string
}

const unitWord = /(?:(?:°|deg(?:rees?)?(?= ?[cf](?!\p{L}))) ?)?\p{L}+(?:·\p{L}+)?|[%"']/iuy

/**
 * Reads the whole text as one quantity and gives it in the dimension's base unit (A, V, Ah, Wh, W, Ω, °C, m, kg;
 * a share and a soc as 0 to 1; a rate in C). Throws a Problem that names the token.
 */
export function readQuantity(text: string, dimension: DimensionName, narrower?: Narrower): number {
  const scan = new Scanner(plainText(text))
  const value = takeQuantity(scan, dimension, narrower)
  if (value !== undefined && scan.done) return value
  throw notAQuantity(scan.text, dimension, narrower)
}

/** Reads a quantity where the scanner stands; undefined, and not moved, where there is none of this dimension. */
export function takeQuantity(scan: Scanner, dimension: DimensionName, narrower?: Narrower): number | undefined {
  return scan.attempt(() => {
    const start = scan.at
    const numeral = takeNumeral(scan)
    if (numeral === undefined) return undefined
    const unit = takeUnit(scan, dimension)
    if (unit === undefined) return undefined
    return quantityOf(numeral, unit, dimension, narrower, scan.text.slice(start, scan.at))
  })
}

/** The unit of `dimension` that stands here, as typed. */
function takeUnit(scan: Scanner, dimension: DimensionName): string | undefined {
  return scan.attempt(() => {
    scan.take(/ /y)
    const word = scan.take(unitWord)?.[0]
    return word !== undefined && hasUnit(dimension, word) ? word : undefined
  })
}

function hasUnit(dimension: DimensionName, word: string): boolean {
  return unitOf(word, dimensions[dimension]) !== undefined
}

/** Converts a numeral with a unit of `dimension`; `token` is what a Problem quotes. */
export function quantityOf(
  numeral: string,
  unit: string,
  dimension: DimensionName,
  narrower?: Narrower,
  token = numeral,
): number {
  const known = unitOf(unit, dimensions[dimension])
  if (!known) throw new RangeError(`${unit} is no unit of ${dimension}`)
  const value = toBase(decimalText(numeral, wanted(dimension, narrower)), known)
  return checked(value, token, dimension, narrower)
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
  return shiftedDecimal(value, -(unitOf(dimension.written, dimension)?.exponent ?? 0))
}

/** A converted value keeps no more digits than its scale can tell: 28 °F are -2.2 °C, 2 ft are 0.6096 m. */
function toBase(decimal: string, { exponent, factor, offset = 0 }: Unit): number {
  const value = Number(`${decimal}e${exponent}`)
  if (factor === undefined) return value
  const converted = (value + offset) * factor
  return offset === 0 ? Number(converted.toPrecision(12)) : Number(converted.toFixed(1))
}

function unitOf(word: string | undefined, { units }: Pick<Dimension, 'units'>): Unit | undefined {
  if (word === undefined) return undefined
  const name = word.replace(/^(?:°|deg(?:rees?)?(?= ?[cf]$)) ?/i, '°')
  // A capital M before an ohm would be a million of them: never a thousandth.
  if (/^M(?:Ω|ohm)/.test(name)) return undefined
  const lower = name.toLowerCase()
  return Object.hasOwn(units, lower) ? units[lower] : undefined
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
