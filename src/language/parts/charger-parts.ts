// The parts that a charger is told by, in a detail and in a sentence.

import { problemAt } from '../../ground/plain-text.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { decimalText } from '../candidates/sentence/written.ts'
import * as texts from './charger.words.ts'
import { measured, mostSeries } from './draft.ts'
import { bareCapacityAt } from './pack-capacity.ts'
import { endsAt, rowAt } from './rows.ts'

interface Window {
  readonly min?: number
  readonly max?: number
}

export interface ChargerDraft {
  named?: true
  power_W?: number
  /** A list of currents, or a range. */
  steps?: readonly number[]
  from_A?: number
  most_A?: number
  by_A?: number
  cells?: Window
  input?: Window
  /** Several currents stand there: nothing else is told like that. */
  several?: true
  efficiency?: number
  balance_A?: number
  needsBalanceLead?: true
  cutoffs_V?: readonly number[]
}

/** Reads the part at this token and gives the token behind it; in a detail it throws a Problem for what no charger has. */
export function chargerPart(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  return (
    rangeAt(sentence, at, draft) ??
    listAt(sentence, at, draft) ??
    powerAt(sentence, at, draft) ??
    currentAt(sentence, at, draft) ??
    cellsAt(sentence, at, draft) ??
    inputAt(sentence, at, draft)
  )
}

const hasCurrents = ({ steps, most_A }: ChargerDraft): boolean => steps !== undefined || most_A !== undefined

/** Chargers set by a range step by this much: common practice. */
export const usualIncrement_A = 0.1
const mostTold_A = 60

/** "0.1 to 10 A", "0.1-10A by 0.1". */
function rangeAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const ends = hasCurrents(draft) ? undefined : endsAt(sentence, at, 'current')
  if (!ends || (sentence.isTalk && ends.to > mostTold_A) || ends.from >= ends.to || ends.from < 0.01) return undefined
  draft.from_A = ends.from
  draft.most_A = ends.to
  draft.several = true
  const after = incrementEnd(sentence, ends.after, draft) ?? ends.after
  if (sentence.isTalk || (draft.by_A ?? usualIncrement_A) <= ends.to - ends.from) return after
  throw problemAt(sentence.typed(at, after), texts.incrementTooWide, {
    expected: texts.rangeAndIncrement,
    example: '0.1-10A by 0.1',
  })
}

function incrementEnd(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const words = sentence.word(at) === ',' ? at + 1 : at
  if (!/^(?:by|in|steps?)$/.test(sentence.word(words))) return undefined
  let of = words + 1
  while (/^(?:steps|of)$/.test(sentence.word(of))) of += 1
  const step = measured(sentence, of, 'current')
  const numeral = sentence.numerals[of]
  const value = step?.value ?? numeral?.value ?? 0
  const most = sentence.isTalk ? (draft.most_A ?? 0) - (draft.from_A ?? 0) : 10
  if (value < 0.001 || value > most) return undefined
  draft.by_A = value
  const after = step?.after ?? numeral?.after ?? of
  return /^steps?$/.test(sentence.word(after)) ? after + 1 : after
}

/** "0.3/0.8/1.5/3A", "1 2 3 5 A steps", "1, 2 or 3 amps". */
function listAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const row = hasCurrents(draft) ? undefined : rowAt(sentence, at, 'current')
  if (!row || row.values.length < 2) return undefined
  const { values, hasUnit, slashes, after } = row
  if (values.some(value => value < 0.01 || (sentence.isTalk && value > mostTold_A))) return undefined
  // Without a unit only a list with slashes, and none that could be the volts of cells.
  const cells = values.every(value => value >= 2 && value <= 4.5 && !Number.isInteger(value))
  const steps = /^steps?$/.test(sentence.word(after))
  const rising = values.every((value, index) => index === 0 || value > (values[index - 1] ?? 0))
  if (!hasUnit && !steps && (cells || slashes < 2 || values.length < 3 || !rising)) return undefined
  // "1.3 or 2.6A?" is a choice between two currents.
  const isChoice = sentence.isTalk && values.length < 3 && slashes === 0 && !draft.named
  if (hasUnit && !steps && isChoice) return undefined
  draft.steps = [...new Set(values)].sort((a, b) => a - b)
  draft.several = true
  return steps ? after + 1 : after
}

function powerAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const measure = measured(sentence, at, 'power')
  if (!measure || draft.power_W !== undefined) return undefined
  if (sentence.isTalk && (measure.value < 3 || measure.value > 3000)) return undefined
  draft.power_W = measure.value
  return measure.after
}

function currentAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const measure = measured(sentence, at, 'current')
  if (!measure || hasCurrents(draft)) return undefined
  if (sentence.isTalk && (measure.value > mostTold_A || measure.value < 0.05)) return undefined
  draft.most_A = measure.value
  return /^(?:max|maximum)$/.test(sentence.word(measure.after)) ? measure.after + 1 : measure.after
}

const isCount = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= mostSeries
const cellUnit = /^(?:s|cells?)$/

/** "1-6S", "up to six cells", "6S"; in a sentence only beside other parts of a charger. */
function cellsAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const low = sentence.numerals[at]
  if (!low || draft.cells !== undefined) return undefined
  const own = cellUnit.test(sentence.word(low.after)) ? low.after + 1 : low.after
  const high = /^(?:-|to)$/.test(sentence.word(own)) ? sentence.numerals[own + 1] : undefined
  if (high && cellUnit.test(sentence.word(high.after))) {
    if (isCount(low.value) && isCount(high.value) && high.value >= low.value) {
      draft.cells = { min: low.value, max: high.value }
      return high.after + 1
    }
    return noCells(sentence, at, high.after + 1)
  }
  // Cells with a capacity behind them are a pack.
  if (own === low.after || (sentence.isTalk && (!isDefinite(draft) || bareCapacityAt(sentence, own)))) return undefined
  if (!isCount(low.value)) return noCells(sentence, at, own)
  const isLeast = !sentence.isTalk && sentence.word(own) === '+'
  draft.cells = isLeast ? { min: low.value } : { max: low.value }
  return isLeast ? own + 1 : own
}

function noCells(sentence: Sentence, first: number, after: number): undefined {
  if (sentence.isTalk) return undefined
  const wanted = { expected: texts.cellsOfCharger(mostSeries), example: '1-4S' }
  throw problemAt(sentence.typed(first, after), texts.noSuchCells, wanted)
}

export const inputVolts = { phrase: texts.inputPhrase, min: 2, max: 60, example: '10-26V' }
const isInput = (word: string): boolean => word === 'in' || word === 'input'

/** "7 to 28 V", "11-18v input"; in a detail "up to 28V", "9V+" and "12V input" too. */
function inputAt(sentence: Sentence, start: number, draft: ChargerDraft): number | undefined {
  if (draft.input !== undefined) return undefined
  const isOfCharger = !sentence.isTalk || draft.named === true
  const at = isOfCharger && /^(?:input|dc)$/.test(sentence.word(start)) ? start + 1 : start
  const ends = endsAt(sentence, at, 'voltage', inputVolts) ?? (isOfCharger ? bareInput(sentence, start, at) : undefined)
  const isRange = ends !== undefined && ends.from < ends.to
  if (isRange && (!sentence.isTalk || (ends.to >= 9 && ends.to <= 60 && ends.from >= 4))) {
    draft.input = { min: ends.from, max: ends.to }
    return isInput(sentence.word(ends.after)) ? ends.after + 1 : ends.after
  }
  if (sentence.isTalk) return undefined
  const isMost = sentence.word(at) === 'max' || (sentence.word(at) === 'up' && sentence.word(at + 1) === 'to')
  const first = !isMost ? at : sentence.word(at) === 'up' ? at + 2 : at + 1
  const { value, after } = measured(sentence, first, 'voltage') ?? { value: 0, after: 0 }
  const behind = sentence.word(after)
  if (after === 0 || !(isMost || behind === '+' || isInput(behind))) return undefined
  draft.input = isMost ? { max: value } : behind === '+' ? { min: value } : { min: value, max: value }
  return isMost ? after : after + 1
}

/** "Input 11-18", "18-30 in": the word for it stands in the unit's place. */
function bareInput(sentence: Sentence, start: number, at: number) {
  const low = sentence.numerals[at]
  const high = low && /^(?:-|to)$/.test(sentence.word(low.after)) ? sentence.numerals[low.after + 1] : undefined
  const isNamed = high !== undefined && (at > start || isInput(sentence.word(high.after)))
  return low && isNamed ? { from: low.value, to: high.value, after: high.after } : undefined
}

/** Its watts or its currents are told. */
export const isDefinite = (draft: ChargerDraft): boolean => draft.power_W !== undefined || hasCurrents(draft)
const least_A = 0.1

/** In notation; a single current is the most of a charger that people set in small steps. Empty where nothing is told. */
export function writtenCharger(draft: ChargerDraft): string {
  const { steps, from_A, most_A, by_A, power_W, cells, input } = draft
  if (!isDefinite(draft) && input === undefined && cells === undefined) return ''
  const lowest = from_A ?? (most_A !== undefined && most_A > least_A * 2 ? least_A : undefined)
  const range = lowest === undefined ? '' : `${decimalText(lowest)}-`
  return [
    steps && `${steps.map(step => decimalText(step)).join('/')}A`,
    most_A !== undefined && `${range}${decimalText(most_A)}A`,
    by_A !== undefined && `by ${decimalText(by_A)}`,
    power_W !== undefined && `${decimalText(power_W)}W`,
    cells && `${cells.min === undefined ? '' : `${cells.min}-`}${cells.max}S`,
    input && `${input.min}-${input.max}V`,
    steps === undefined && most_A === undefined && 'charger',
  ]
    .filter(Boolean)
    .join(' ')
}
