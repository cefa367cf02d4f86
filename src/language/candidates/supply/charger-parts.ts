// The parts that people tell a charger by.

import { measured } from '../../parts/draft.ts'
import { bareCapacityAt } from '../../parts/pack-capacity.ts'
import type { Sentence } from '../sentence/sentence.ts'
import { decimalText } from '../sentence/written.ts'

export interface ChargerDraft {
  named?: true
  power_W?: number
  /** A list of currents, or a range. */
  steps?: readonly number[]
  from_A?: number
  most_A?: number
  by_A?: number
  cells?: string
  input?: string
  /** Several currents stand there: nothing else is told like that. */
  several?: true
}

/** Reads the part at this token and gives the token behind it. */
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

/** "0.1 to 10 A", "0.1-10A by 0.1". */
function rangeAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const low = sentence.numerals[at]
  if (!low || low.needsUnit || hasCurrents(draft)) return undefined
  const unit = measured(sentence, at, 'current')
  const sign = unit?.after ?? low.after
  if (!/^(?:-|to|up)$/.test(sentence.word(sign))) return undefined
  const next = sentence.word(sign + 1) === 'to' ? sign + 2 : sign + 1
  const high = measured(sentence, next, 'current')
  if (!high || high.value > 60) return undefined
  const from_A = unit?.value ?? low.value * (high.value / Number(high.decimal))
  if (from_A >= high.value || from_A < 0.01) return undefined
  draft.from_A = Number(from_A.toPrecision(12))
  draft.most_A = high.value
  draft.several = true
  return incrementEnd(sentence, high.after, draft) ?? high.after
}

function incrementEnd(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const words = /^(?:by|in)$/.test(sentence.word(at)) ? at + 1 : undefined
  if (words === undefined) return undefined
  const of = sentence.word(words) === 'steps' && sentence.word(words + 1) === 'of' ? words + 2 : words
  const step = measured(sentence, of, 'current')
  const numeral = sentence.numerals[of]
  const value = step?.value ?? numeral?.value ?? 0
  if (value < 0.001 || value > (draft.most_A ?? 0) - (draft.from_A ?? 0)) return undefined
  draft.by_A = value
  const after = step?.after ?? numeral?.after ?? of
  return /^steps?$/.test(sentence.word(after)) ? after + 1 : after
}

/** "0.3/0.8/1.5/3A", "1 2 3 5 A steps", "1, 2 or 3 amps". */
function listAt(sentence: Sentence, start: number, draft: ChargerDraft): number | undefined {
  if (hasCurrents(draft)) return undefined
  const typed: number[] = []
  let at = start
  let slashes = 0
  while (typed.length < 20) {
    const numeral = sentence.numerals[at]
    if (!numeral || numeral.needsUnit) return undefined
    const unit = measured(sentence, at, 'current')
    if (!unit && sentence.measures[at]?.length) return undefined
    typed.push(unit ? unit.value : numeral.value)
    const after = unit?.after ?? numeral.after
    const separator = sentence.word(after)
    if (separator === '/') slashes += 1
    if (/^(?:\/|,|or|and)$/.test(separator) && sentence.numerals[after + 1]) at = after + 1
    else if (!unit && sentence.numerals[after] && !sentence.glued(after)) at = after
    else return listOf(sentence, draft, typed, unit !== undefined, slashes, after)
  }
  return undefined
}

function listOf(
  sentence: Sentence,
  draft: ChargerDraft,
  typed: readonly number[],
  unit: boolean,
  slashes: number,
  after: number,
): number | undefined {
  if (typed.length < 2 || typed.some(value => value < 0.01 || value > 60)) return undefined
  // Without a unit only a list with slashes, and none that could be the volts of cells.
  const cells = typed.every(value => value >= 2 && value <= 4.5 && !Number.isInteger(value))
  const steps = /^steps?$/.test(sentence.word(after))
  const rising = typed.every((value, at) => at === 0 || value > (typed[at - 1] ?? 0))
  if (!unit && !steps && (cells || slashes < 2 || typed.length < 3 || !rising)) return undefined
  // "1.3 or 2.6A?" is a choice between two currents.
  if (unit && !steps && typed.length < 3 && slashes === 0 && !draft.named) return undefined
  draft.steps = [...new Set(typed)].sort((a, b) => a - b)
  draft.several = true
  return steps ? after + 1 : after
}

function powerAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const measure = measured(sentence, at, 'power')
  if (!measure || draft.power_W !== undefined || measure.value < 3 || measure.value > 3000) return undefined
  draft.power_W = measure.value
  return measure.after
}

function currentAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const measure = measured(sentence, at, 'current')
  if (!measure || hasCurrents(draft) || measure.value > 60 || measure.value < 0.05) return undefined
  draft.most_A = measure.value
  return /^(?:max|maximum)$/.test(sentence.word(measure.after)) ? measure.after + 1 : measure.after
}

/** "1-6S", "up to six cells", "6S": only beside other parts of a charger. */
function cellsAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const low = sentence.numerals[at]
  if (!low || draft.cells !== undefined || !isCount(low.value)) return undefined
  const unit = /^(?:s|cells?)$/
  const own = unit.test(sentence.word(low.after)) ? low.after + 1 : low.after
  const ranged = /^(?:-|to)$/.test(sentence.word(own))
  const high = ranged ? sentence.numerals[own + 1] : undefined
  if (high && isCount(high.value) && unit.test(sentence.word(high.after)) && high.value > low.value) {
    draft.cells = `${low.value}-${high.value}S`
    return high.after + 1
  }
  // Cells with a capacity behind them are a pack.
  if (own === low.after || !isDefinite(draft) || bareCapacityAt(sentence, own)) return undefined
  draft.cells = `${low.value}S`
  return own
}

const isCount = (value: number): boolean => Number.isInteger(value) && value >= 1 && value <= 14

/** "7 to 28 V", "11-18v input". */
function inputAt(sentence: Sentence, at: number, draft: ChargerDraft): number | undefined {
  const low = sentence.numerals[at]
  if (!low || low.needsUnit || draft.input !== undefined) return undefined
  const sign = measured(sentence, at, 'voltage')?.after ?? low.after
  if (!/^(?:-|to)$/.test(sentence.word(sign))) return undefined
  const high = measured(sentence, sign + 1, 'voltage')
  if (!high || high.value < 9 || high.value > 60 || low.value < 4 || low.value >= high.value) return undefined
  draft.input = `${low.decimal}-${high.decimal}V`
  return /^(?:in|input)$/.test(sentence.word(high.after)) ? high.after + 1 : high.after
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
    cells,
    input,
    steps === undefined && most_A === undefined && 'charger',
  ]
    .filter(Boolean)
    .join(' ')
}
