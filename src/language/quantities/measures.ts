// Numbers with their units, whatever people call them.

import { distance } from 'fastest-levenshtein'
import { type Dimension, type DimensionName, dimensions } from './dimensions.ts'
import { halfEnd, type Numeral } from './numerals.ts'
import { Tokens } from './tokens.ts'

type Measured = DimensionName | 'area' | 'gauge' | 'fahrenheit' | 'time'

export interface Measure {
  readonly dimension: Measured
  /** In A, V, Ah, Wh, W, Ω, °C, m, kg, s, mm²; a share in percent, a rate in C; fahrenheit in °F. */
  readonly value: number
  /** As typed, in the unit that was typed. */
  readonly decimal: string
  readonly numeral: Numeral
  readonly first: number
  readonly after: number
  /** 0 to 1: lower where the unit may be none. */
  readonly sure: number
}

interface Unit {
  readonly dimension: Measured
  readonly exponent: number
  readonly factor?: number | undefined
}

const unit = (dimension: Measured, factor: number, names: string) =>
  names.split(', ').map(name => [name, { dimension, exponent: 0, factor }] as const)

/** Degrees of another scale are kept as typed, and shares in percent; what is a word in a sentence is a unit in a detail. */
const measured =
  (inDetail: boolean) =>
  ([of, { units: names }]: [string, Dimension]) =>
    Object.entries(names).flatMap(([name, { exponent, factor, offset, isNoWord = false }]) => {
      const dimension = offset === undefined ? (of as DimensionName) : ('fahrenheit' as const)
      const one = {
        dimension,
        exponent: of === 'share' ? 0 : exponent,
        factor: offset === undefined ? factor : undefined,
      }
      const words = new Tokens(name).tokens.map(({ word }) => word)
      return isNoWord !== inDetail ? [] : [[words.join(' '), one] as const]
    })

const listed: readonly (readonly [string, Unit])[] = [
  ...Object.entries(dimensions).flatMap(measured(false)),
  ...unit('area', 1, 'mm 2, mm ², mm ^ 2, sq mm, square mm, sqmm, square millimetre, square millimetres'),
  ...unit('area', 1, 'square millimeter, square millimeters, mm squared'),
  ...unit('gauge', 1, 'awg, gauge, ga'),
  ...unit('time', 1, 's, sec, secs, second, seconds'),
  ...unit('time', 60, 'm, min, mins, minute, minutes, minuten'),
  ...unit('time', 3600, 'h, hr, hrs, hour, hours, stunde, stunden, std, heure, heures'),
  ...unit('time', 86_400, 'day, days, tag, tage'),
  ...unit('time', 7 * 86_400, 'week, weeks, wk, wks'),
  ...unit('time', 30 * 86_400, 'month, months'),
  ...unit('time', 365 * 86_400, 'year, years, yr, yrs, season, seasons'),
]
type Units = ReadonlyMap<string, readonly Unit[]>
const byName = (all: typeof listed): Units =>
  new Map([...Map.groupBy(all, ([name]) => name)].map(([name, of]) => [name, of.map(([, one]) => one)]))
const units = byName(listed)
const unitsInDetail = byName([...listed, ...Object.entries(dimensions).flatMap(measured(true))])

/**
 * All readings of the quantity that begins with this numeral, the longest unit's only. In talk "1.500 mAh" can only
 * mean thousands; of other units, and in a detail, the point or comma is one of decimals.
 */
export function measuresAt(sentence: Tokens, told: Numeral, isTalk = true): readonly Measure[] {
  const numeral = isTalk ? told : { ...told, thousands: undefined }
  const end = unitEnd(sentence, numeral.after, isTalk ? units : unitsInDetail)
  // A capital M before an ohm would be a million of them: never a thousandth.
  if (!end || /^M ?(?:Ω|ohm)/.test(sentence.typed(numeral.after, end.after))) return []
  return end.units.flatMap(one => measureOf(sentence, numeral, one, end.after) ?? [])
}

/** Units that only a slip of the finger changes into another word: "wats", "ampss", "minuts". */
const longUnits = 'watts watt amps ampere volts minutes hours percent celsius'.split(' ')
/** Words of the trade that are near to them. */
const noUnits = new Set(['want', 'wants', 'wait', 'waits', 'warts', 'alps', 'apps'])

function misspelled(word: string): readonly Unit[] | undefined {
  if (word.length < 4 || noUnits.has(word)) return undefined
  const meant = longUnits.find(name => name[0] === word[0] && distance(name, word) === 1)
  return meant === undefined ? undefined : units.get(meant)
}

/** The longest unit at this token; a hyphen between a number and its unit, or inside of one, says nothing. */
function unitEnd(sentence: Tokens, at: number, known: Units): { units: readonly Unit[]; after: number } | undefined {
  const first = sentence.word(at) === '-' && sentence.glued(at) && sentence.glued(at + 1) ? at + 1 : at
  let name = ''
  let found: { units: readonly Unit[]; after: number } | undefined
  for (let next = first; next < first + 4 && next < sentence.tokens.length; next += 1) {
    const word = sentence.word(next)
    if (word === '-' && next > first && sentence.glued(next)) continue
    if (word === '"' && sentence.closesQuote(next)) break
    name = name === '' ? word : `${name} ${word}`
    const named = known.get(name) ?? (next === first ? misspelled(name) : undefined)
    if (named) found = { units: named, after: next + 1 }
  }
  return found
}

const articleBefore = /^(?:cell|pack|piece|pop|day|week|time|go|shot|minute|second|bit|lot|few|4|3|2)$/

function measureOf(
  sentence: Tokens,
  numeral: Numeral,
  { dimension, exponent, factor }: Unit,
  after: number,
): Measure | undefined {
  const short = after - numeral.after === 1 ? sentence.word(numeral.after) : ''
  const glued = sentence.glued(numeral.after)
  // "3.7 a cell", "twice a day": an article, no ampere.
  if (short === 'a' && !glued && articleBefore.test(sentence.word(after))) return undefined
  if (numeral.needsUnit && /^[acfms]$/.test(short) && !(short === 'c' && numeral.value < 1)) return undefined
  // Cells in series, and "2200s", "21700s": packs and cells by what stands on them.
  if (short === 's' && (numeral.value <= 14 || numeral.value >= 1000)) return undefined
  // "12.48 meter 12.55": what shows the next number.
  if (short === 'meter' && sentence.tokens[after]?.kind === 'number') return undefined
  const half = numeral.needsUnit && numeral.value === 1 ? halfEnd(sentence, after) : undefined
  const typed = half === undefined ? decimalOf(numeral, dimension, exponent) : '1.5'
  const scaled = Number(`${typed}e${exponent}`)
  return {
    dimension,
    value: factor === undefined ? scaled : Number((scaled * factor).toPrecision(12)),
    decimal: typed,
    numeral,
    first: numeral.first,
    after: half ?? after,
    sure: (numeral.thousands === undefined ? 1 : 0.7) * (short.length === 1 && !glued ? 0.9 : 1),
  }
}

function decimalOf(numeral: Numeral, dimension: Measured, exponent: number): string {
  const { decimal, thousands } = numeral
  const isMilli = (dimension === 'capacity' || dimension === 'current') && exponent === -3
  return thousands !== undefined && isMilli ? thousands : decimal
}
