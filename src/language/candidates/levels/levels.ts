// Where a pack stands or is to go: "3.7 a cell", "12.6v" of a 3S, "30%", "half full", "just landed", "storage".

import { wordSet } from '../../../ground/word-set.ts'
import { measured, mostSeries } from '../../parts/draft.ts'
import { highestCell_V, ofCell, ofPack } from '../../parts/level-words.ts'
import { type Family, type Found, none, type Sentence } from '../sentence/sentence.ts'
import { lampsAt, percents, shareAt, standing } from './shares.ts'
import { findStateWords } from './state-words.ts'

/** Words of somebody who holds a meter, or of a setting: volts then are a reading or a limit, no state. */
const measuring = wordSet(
  'meter multimeter dmm calibrate calibrated trim cutoff cutout alarm supply psu input terminate',
)
const lowestCell_V = 2

interface Volts {
  readonly value: number
  readonly decimal: string
  readonly first: number
  readonly after: number
  /** Whether the unit was typed. */
  readonly unit: boolean
}

function voltsAt(sentence: Sentence, first: number): Volts | undefined {
  const measure = measured(sentence, first, 'voltage')
  if (measure) {
    if (measure.value > 100) return undefined
    const milli = measure.value === Number(measure.decimal) ? measure.decimal : String(measure.value)
    return { value: measure.value, decimal: milli, first, after: measure.after, unit: true }
  }
  const numeral = sentence.numerals[first]
  if (!numeral || numeral.needsUnit || numeral.value > 60) return undefined
  if (sentence.word(first - 1) === ':' && sentence.glued(first)) return undefined
  if (sentence.isStuck(numeral.after) || isOtherMeasure(sentence, first) || isThousands(sentence, first))
    return undefined
  const { decimal, value, after } = numeral
  return { value, decimal, first, after, unit: false }
}

/** "4,980 mAh when new and 4,210 now": a comma parts thousands where mAh are told so. */
const isThousands = (sentence: Sentence, first: number): boolean =>
  /^\d,\d{3}$/.test(sentence.typed(first, first + 1)) &&
  sentence.measures.some(
    (row, at) => /,\d{3}$/.test(sentence.typed(at, at + 1)) && row.some(({ dimension }) => dimension === 'capacity'),
  )

/** Its unit is one of something else ("a" of "a cell" is none). */
const isOtherMeasure = (sentence: Sentence, at: number): boolean =>
  sentence.measures[at]?.some(({ dimension }) => dimension !== 'voltage') ?? false

/** Cells in series of the packs that the text names. */
const seriesIn = (found: readonly Found[]): readonly number[] => [
  ...new Set(found.flatMap(({ pack }) => pack?.series ?? [])),
]

export const findLevels: Family = (sentence, before) => {
  const series = seriesIn(before)
  const measures = sentence.mentions(measuring)
  const found: Found[] = [...findStateWords(sentence)]
  for (let first = 0; first < sentence.tokens.length; first += 1) {
    found.push(...shareAt(sentence, first), ...lampsAt(sentence, first))
    const volts = voltsAt(sentence, first)
    if (volts) found.push(...levelsOf(sentence, volts, series, measures))
  }
  return found
}

function levelsOf(sentence: Sentence, volts: Volts, series: readonly number[], measures: boolean): readonly Found[] {
  const { value, decimal, first, after, unit } = volts
  const state = (text: string, end: number, score: number): Found => ({ kind: 'state', text, first, after: end, score })
  const voltage = (score: number): Found => ({ kind: 'voltage', text: `${decimal}V`, first, after, score })
  // However high: what no cell has is for its reader to refuse.
  const cell = value <= highestCell_V || unit ? sentence.phraseEnd(after, ofCell) : undefined
  // "0.5 each" of packs is a current: no cell that is told by a bare number stands so low.
  const isOfPacks = !unit && value < lowestCell_V && eachOne.test(sentence.word(after))
  if (cell !== undefined && (unit || decimal.includes('.')) && !isOfPacks) {
    return [state(`${decimal}V per cell`, cell, 0.95), state(`${decimal}V per cell`, after, 0.6), voltage(0.3)]
  }
  if (value <= highestCell_V && decimal.includes('.') && tellsOfCell(sentence, first)) {
    return [state(`${decimal}V per cell`, after, 0.9), voltage(0.3)]
  }
  // "Pack A 3.85 pack B 3.91": the next one.
  const isNext = sentence.word(after) === 'pack' && packName.test(sentence.word(after + 1))
  const pack = !isNext && (unit || decimal.includes('.')) ? sentence.phraseEnd(after, ofPack) : undefined
  if (pack !== undefined) {
    return [state(`${decimal}V pack`, pack, 0.9), state(`${decimal}V pack`, after, 0.6), voltage(0.4)]
  }
  const cued = standing.has(sentence.word(first - 1))
  const doubt = measures ? 0.6 : 1
  const reading = measures ? 0.2 : 0
  if (value >= lowestCell_V && value <= highestCell_V) {
    const score = unit ? 0.75 : bareCellScore(decimal, value, cued)
    if (score === 0) return none
    return [state(`${decimal}V`, after, score * doubt), voltage((unit ? 0.55 : 0.3) + reading)]
  }
  if (value < lowestCell_V) {
    if (!unit && !(decimal.includes('.') && (cued || value >= 1))) return none
    return [state(`${decimal}V`, after, unit ? 0.4 : cued ? 0.25 : 0.15), voltage(unit ? 0.45 : 0.15)]
  }
  const fits = series.some(cells => value / cells >= 1.8 && value / cells <= highestCell_V)
  const likely = packScore(sentence, volts, fits, cued)
  if (likely === 0) return unit ? [voltage(0.5)] : fits && cued ? [voltage(0.15)] : none
  const bare = decimal.includes('.') ? 0.35 : 0.1
  return [state(`${decimal}V pack`, after, likely * doubt), voltage((unit ? 0.5 : bare) + reading)]
}

const packName = /^(?:[a-f]|[1-9]|one|two|three|four|no|nr|number)$/
const eachOne = /^(?:each|apiece)$/

/** "Cell 3 reads 2.4", "one cell 3.1 and the other only 1.9": which of the cells is said right before. */
function tellsOfCell(sentence: Sentence, first: number): boolean {
  if (aims.has(sentence.word(first - 1)) && sentence.word(first - 2) !== 'down') return false
  for (let at = first - 1; at >= Math.max(0, first - mostToWhich); at -= 1) {
    const word = sentence.word(at).replace(/['’]s$/, '')
    if (cellWords.has(word)) return !(word === 'cell' && (sentence.numerals[at - 1]?.value ?? 1) > 1)
    // "Cell 1 3.81, two 3.80, number 3 3.79".
    if (whichOne.has(word) || sentence.wholeNumeral(at, 1, mostSeries)) return isAmongCells(sentence, at)
    if (!beforeReading.has(word) && !isMark(sentence, at)) return false
  }
  return false
}
/** "Lowest cell → 0.9 V", "cell 2~3.1", "cell 1...2.9": a sign that ends no sentence. */
const isMark = (sentence: Sentence, at: number): boolean =>
  sentence.tokens[at]?.kind === 'sign' && (sentence.glued(at + 1) || !/^[.,;?!]$/.test(sentence.word(at)))
const mostToWhich = 6
const aims = wordSet('to until till for')
const cellWords = wordSet('cell cells group groups zelle zellen')
const whichOne = wordSet(
  'other others one ones first second third fourth fifth sixth last rest middle weak weakest lowest',
)
const beforeReading = wordSet(
  'is at are was reads read reading shows says sits rests stays on only just now still even down to barely the a an : = - , all both has',
)
/** Cells are spoken of before it, and nothing else that there may be one of. */
function isAmongCells(sentence: Sentence, at: number): boolean {
  for (let back = at - 1; back >= 0; back -= 1) {
    if (cellWords.has(sentence.word(back))) return true
    if (otherOnes.test(sentence.word(back)) || /^[.?!;]$/.test(sentence.word(back))) return false
  }
  return false
}
const otherOnes = /^(?:packs?|lipos?|lihvs?|batter(?:y|ies)|chargers?|akkus?)$/

/** What supplies give, sharp. */
const ofSupplies = wordSet('5 9 12 13 15 18 19 20 24 28 30 36 48')

/** How surely volts above those of one cell are where a pack stands: 12V sharp are a supply's, 12.4V most often a pack's. */
function packScore(sentence: Sentence, { decimal, unit }: Volts, fits: boolean, cued: boolean): number {
  const exact = decimal.includes('.')
  if (!exact) return unit ? (fits && (cued || !ofSupplies.has(decimal)) ? 0.6 : 0.3) : 0
  if (fits) return unit ? 0.7 : 0.65
  return cued || sentence.mentions(percents) ? (unit ? 0.58 : 0.5) : unit ? 0.38 : 0.3
}

/** How surely a number without a unit is the volts of one cell: `3.85` hardly anything else, `2.2` most often amperes. */
function bareCellScore(decimal: string, value: number, cued: boolean): number {
  const decimals = decimal.split('.')[1]?.length ?? 0
  if (decimals === 0 || decimals > 3) return 0
  if (decimals >= 2) return value >= 3 ? 0.85 : 0.5
  const likely = value >= 3.4 && value <= 4.2 ? 0.6 : value >= 3 ? 0.35 : 0.2
  return cued ? likely + 0.15 : likely
}
