// One reader for each quantity that a question can carry. All throw a Problem that names the token.

import { thickestGauge, thinnestGauge, wireArea_mm2 } from '../../charging/leads/wire.ts'
import { sumOf } from '../../charging/numbers/sum.ts'
import type { Said } from '../../ground/locale.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { decimalText, oddNumberProblem } from '../scan/number.ts'
import type { DimensionName } from './dimensions.ts'
import { checked, type Narrower, readQuantity, writeQuantity } from './quantity.ts'
import { cannotReadAs, gaugeRange, notAGauge, numberOfPacks, wholeNumber } from './quantity.words.ts'

type Reader = (text: string, narrower?: Narrower) => number
type Writer = (value: number) => string

const of = (dimension: DimensionName): readonly [Reader, Writer] => [
  (text, narrower) => readQuantity(text, dimension, narrower),
  value => writeQuantity(value, dimension),
]

/** A, 0.01 to 500 unless narrowed. */
export const [readCurrent, writeCurrent] = of('current')
/** V, 0 to 100. */
export const [readVoltage, writeVoltage] = of('voltage')
/** Ah, 0.02 to 60. The unit is required; a pack's bare `720` is read by `readPack` only. */
export const [readCapacity, writeCapacity] = of('capacity')
/** Wh, 0.1 to 5000. */
export const [readEnergy, writeEnergy] = of('energy')
/** W, 0.5 to 3000. */
export const [readPower, writePower] = of('power')
/** Ω, 0.00001 to 10. */
export const [readResistance, writeResistance] = of('resistance')
/** °C, −50 to 150; °F is converted. */
export const [readTemperature, writeTemperature] = of('temperature')
/** 0 to 1, from 0 to 100 %. */
export const [readPercent, writePercent] = of('share')
/** m, 0.001 to 100. */
export const [readLength, writeLength] = of('length')
/** kg, 0.0001 to 50. */
export const [readMass, writeMass] = of('mass')

/** C, 0.01 to 20: `2C`, `0.5 C`, or a fraction of the capacity as `C/10`. */
export const readRate: Reader = (text, narrower) => {
  const fraction = /^c ?\/ ?(\d{1,3})$/i.exec(plainText(text))?.[1]
  return readQuantity(
    fraction && Number(fraction) > 0 ? `${Number((1 / Number(fraction)).toPrecision(4))}C` : text,
    'rate',
    narrower,
  )
}

export const writeRate: Writer = value => writeQuantity(value, 'rate')

export interface WholeNumberRange {
  /** What is counted, as in "a number of packs". */
  readonly phrase?: Said
  readonly min?: number
  readonly max?: number
  readonly example?: string
}

const numberWords = 'no one two three four five six seven eight nine ten eleven twelve'.split(' ')

export function numberNamed(word: string): number | undefined {
  const number = numberWords.indexOf(word.toLowerCase())
  return number < 0 ? undefined : number
}

/** A whole number: `6`, `6x`, `x6`, `6 packs`, `six`. */
export function readCount(text: string, range: WholeNumberRange = {}): number {
  const { phrase = numberOfPacks, min = 1, max = 100, example = '6' } = range
  const plain = plainText(text)
  const wanted = { expected: wholeNumber(phrase, min, max), example }
  const odd = oddNumberProblem(plain, wanted)
  if (odd) throw odd
  const said = /^(?:x ?)?([+-]?[\d.,]+|[a-z]+)(?: ?(?:x|packs?|batter(?:y|ies)|times|pcs?))?$/i.exec(plain)?.[1] ?? ''
  const count = numberNamed(said) ?? (/\d/.test(said) ? Number(decimalText(said, wanted)) : Number.NaN)
  if (Number.isInteger(count) && count >= min && count <= max) return count
  throw problemAt(plain, cannotReadAs(phrase), wanted)
}

export const writeCount: Writer = value => String(value)
const crossSection = /^(\d+(?:[.,]\d+)?|[.,]\d+) ?(?:mm(?:2|²|\^2)|sq\.? ?mm|square (?:mm|millimet(?:re|er)s?))$/i

/** American wire gauge, 0 to 40: `18 AWG`, `AWG 18`, `16 gauge`; of a cross-section (`2.5mm²`) the one next thinner. */
export function readGauge(text: string): number {
  const plain = plainText(text)
  const match = /^(?:(?:awg|gauge) ?(\d{1,2})|(\d{1,2}) ?-?(?:awg|ga(?:uge)?))$/i.exec(plain)
  const area = crossSection.exec(plain)?.[1]
  const gauge = area === undefined ? Number(match?.[1] ?? match?.[2] ?? Number.NaN) : thinnerThan(area)
  if (gauge >= 0 && gauge <= 40) return gauge
  throw problemAt(plain, notAGauge, { expected: gaugeRange, example: 'AWG 18' })
}

function thinnerThan(area: string): number {
  const mm2 = Number(area.replace(',', '.'))
  for (let gauge = thickestGauge; gauge <= thinnestGauge; gauge += 1) {
    if (wireArea_mm2(gauge) <= mm2) return gauge
  }
  return Number.NaN
}

export const writeGauge: Writer = value => `AWG ${value}`

/** A charging current in A into packs of these sizes, as such or as a C-rate (`1A`, `1C`, `C/2`), or for `each` of them. */
export function readChargeCurrent(text: string, ...sizes_Ah: readonly number[]): number {
  const whole = plainText(text)
  const plain = whole.replace(/ (?:each|per pack)$/i, '')
  const isRate = sizes_Ah.length > 0 && /^[+\d.,]+ ?c$|^c ?\//i.test(plain)
  if (!isRate && plain === whole) return readCurrent(plain)
  const all_Ah = sumOf(sizes_Ah)
  const value_A = isRate ? readRate(plain) * all_Ah : readCurrent(plain) * Math.max(1, sizes_Ah.length)
  return checked(Number(value_A.toPrecision(6)), whole, 'current')
}
