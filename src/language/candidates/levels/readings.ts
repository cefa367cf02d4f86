// Several readings in a row: of cells ("3.82 3.83 3.79", "3,81/3,84/3,80 V") and of their resistance ("5 6 5 7 mΩ").

import { wordSet } from '../../../ground/word-set.ts'
import type { Measure } from '../../quantities/measures.ts'
import type { Family, Found, Sentence } from '../sentence/sentence.ts'

const mostReadings = 14
const between = wordSet(', / ; | - & and und')

interface Row {
  readonly values: readonly number[]
  readonly decimals: readonly string[]
  readonly after: number
  /** Behind the last number, where it has one. */
  readonly unit?: Measure
}

/** Numbers with only signs, "and" or nothing between them; the last may have the unit of all of them. */
function rowAt(sentence: Sentence, first: number): Row | undefined {
  const decimals: string[] = []
  const values: number[] = []
  let [at, after] = [first, first]
  let unit: Measure | undefined
  let units = false
  while (values.length < mostReadings) {
    const numeral = sentence.numerals[at]
    if (!numeral || numeral.needsUnit || numeral.spelled) break
    const measures = sentence.measures[at] ?? []
    const own = measures.find(({ dimension }) => dimension === 'voltage' || dimension === 'resistance')
    if (measures.length > 0 && !own) break
    if (unit && own && own.dimension !== unit.dimension) break
    if (!own && sentence.word(numeral.after) !== '/' && sentence.isStuck(numeral.after)) break
    decimals.push(numeral.decimal)
    values.push(numeral.value)
    unit = own ?? unit
    after = own?.after ?? numeral.after
    // A unit behind several numbers is that of all, and ends them.
    if (own && values.length > 1 && !units) break
    units = own !== undefined
    at = separatorEnd(sentence, after)
  }
  return values.length < 2 ? undefined : { values, decimals, after, unit }
}

function separatorEnd(sentence: Sentence, after: number): number {
  let at = after
  while (at < after + 3 && between.has(sentence.word(at))) at += 1
  const skipped = at > after && /^(?:a|an|the|one|is|at|other)$/.test(sentence.word(at)) ? at + 1 : at
  return sentence.word(skipped) === 'other' ? skipped + 1 : skipped
}

const likeCell = (value: number, decimal: string): boolean => decimal.includes('.') && value >= 0 && value <= 4.5

export const findReadings: Family = (sentence, before) => {
  const two = before.some(({ pack }) => pack?.series === 2)
  const found: Found[] = []
  const talk =
    sentence.mentions(resistanceWords) ||
    sentence.measures.some(row => row.some(({ dimension }) => dimension === 'resistance'))
  let inside = 0
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    if (first < inside) continue
    const row = rowAt(sentence, first)
    if (!row) continue
    inside = row.after
    const volts = cellVolts(first, row, two && sentence.word(first - 1) !== 'between')
    const ohms = resistances(first, row, talk)
    const one = isNamedOhms(sentence, first, row) ? (ohms ?? volts) : (volts ?? ohms)
    if (one) found.push(one)
  }
  return [...found, ...findResistances(sentence, talk)]
}

/** "IR 2.1 2.2 3.9", but not "IR fine, cells 2.1 2.2 2.0": the nearer word says what they are. */
const isNamedOhms = (sentence: Sentence, first: number, { unit }: Row): boolean =>
  unit === undefined && resistanceWords.has(sentence.word(first - (joins.has(sentence.word(first - 1)) ? 2 : 1)))
const joins = wordSet('is are was reads read shows : of')

/** Two alone are most often those of two packs, but for a pack of two cells. */
function cellVolts(first: number, { values, decimals, after, unit }: Row, two: boolean): Found | undefined {
  if (unit?.dimension === 'resistance') return undefined
  const all = values.every((value, at) => likeCell(value, decimals[at] ?? '') || value === 0)
  if (!all || !values.some(value => value >= 2)) return undefined
  const twoPlaces = decimals.every(decimal => (decimal.split('.')[1]?.length ?? 0) >= 2)
  const score =
    values.length === 2 && !two ? 0.4 : twoPlaces ? 0.93 : values.length > 2 && Math.min(...values) > 1.8 ? 0.75 : 0.4
  return { kind: 'cellVolts', text: decimals.join(' '), first, after, score }
}

const resistanceWords = wordSet(
  'ir resistance resistances mohm mω milliohm milliohms mohms ri innenwiderstand résistance résistances resistencia',
)

function resistances(first: number, { values, decimals, after, unit }: Row, talk: boolean): Found | undefined {
  const inOhm = unit?.dimension === 'resistance'
  if (!inOhm && !(talk && values.length > 2)) return undefined
  if (values.some(value => value > 500 || value <= 0)) return undefined
  const ohms = unit && unit.value > 1 ? undefined : `${decimals.join(' ')} mΩ`
  return ohms === undefined ? undefined : { kind: 'resistances', text: ohms, first, after, score: inOhm ? 0.93 : 0.7 }
}

/** One alone; without a unit only where resistances are talked about. */
function findResistances(sentence: Sentence, talk: boolean): readonly Found[] {
  return sentence.tokens.flatMap((_, first) => {
    const measure = sentence.measures[first]?.find(({ dimension }) => dimension === 'resistance')
    if (measure) {
      const text = measure.value === Number(measure.decimal) ? `${measure.decimal}Ω` : `${measure.decimal}mΩ`
      return { kind: 'resistance', text, first, after: measure.after, score: 0.85 }
    }
    const before = sentence.word(first - 1)
    // "cell 4" is the fourth one.
    const isName = /^(?:cell|no|nr|number|#)$/.test(before)
    const numeral = talk && !isName ? sentence.bareNumeral(first) : undefined
    if (!numeral || numeral.value <= 0 || numeral.value > 300 || numeral.decimal.length > 4) return []
    const isNamed = /^(?:ir|avg|average|resistance|ri|from|to|was|now|today|has|had|shows|reads|is)$/.test(before)
    const text = `${numeral.decimal}mΩ`
    return { kind: 'resistance', text, first, after: numeral.after, score: isNamed ? 0.75 : 0.3 }
  })
}
