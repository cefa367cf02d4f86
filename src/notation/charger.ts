// Chargers: `0.5/1/2/4A 80W 1-4S 9-20V`, `0.1-10A by 0.1 200W 6S 10-30V`; the parts in any order.

import { Problem } from '../assistant/problem.ts'
import type { Charger, CurrentSteps } from '../charging/charger.ts'
import { takeCurrentSteps, writeCurrentSteps } from './current-steps.ts'
import type { Wanted } from './number.ts'
import { once, type Part, readParts, takeParts } from './parts.ts'
import { takeQuantity, writeQuantity } from './quantity.ts'
import { takeList, takeRange } from './ranges.ts'
import type { Read } from './read.ts'
import { Scanner } from './scanner.ts'
import { plainText, shortened } from './text.ts'

const wanted: Wanted = {
  expected: 'a charger: the currents it offers, then what else you know (power, cells, input volts)',
  example: '0.5/1/2/4A 80W 1-4S 9-20V',
}
const cutoffs = { phrase: 'cutoff voltages per cell', min: 2.5, max: 4.5, example: '4.20/4.35V' }
const input = { phrase: 'an input voltage', min: 2, max: 60, example: '9-20V' }
const balancing = { phrase: 'a balance current', min: 0.01, max: 10, example: 'balance 0.3A' }
const mostSeries = 14

interface Window {
  readonly min?: number
  readonly max?: number
}

interface Draft {
  currents?: CurrentSteps
  power_W?: number
  cells?: Window
  input?: Window
  efficiency?: number
  balance_A?: number
  needsBalanceLead?: true
  cutoffs_V?: readonly number[]
  assumed?: string
  named?: true
}

const needsLead =
  /(?:(?:needs?|requires?|wants?) (?:a |the )?balance (?:lead|plug)|balance (?:lead|plug) (?:needed|required))(?!\p{L})/iuy
const cellRange = /(\d{1,4}) ?s? ?(?:-|to) ?(\d{1,4}) ?s(?!\p{L})/iuy
const cellCount = /(\d{1,4}) ?s(\+)?(?!\p{L})/iuy

function takeCells(scan: Scanner): Window | undefined {
  const range = scan.take(cellRange)
  if (range) return cellWindow(range[0], Number(range[1]), Number(range[2]))
  const count = scan.take(cellCount)
  if (!count) return undefined
  const cells = Number(count[1])
  cellWindow(count[0], cells, cells)
  return count[2] ? { min: cells } : { max: cells }
}

function cellWindow(token: string, min: number, max: number): Window {
  if (min >= 1 && min <= max && max <= mostSeries) return { min, max }
  throw new Problem({
    what: 'I know no charger for that number of cells.',
    token: shortened(token),
    expected: `1S to ${mostSeries}S, the smaller number first`,
    example: '1-4S',
  })
}

function takeInput(scan: Scanner): Window | undefined {
  scan.take(/(?:input|dc) (?=\d)/iuy)
  const range = takeRange(scan, 'voltage', input)
  if (range) return { min: range.from, max: range.to }
  if (scan.take(/(?:up to|max) /iuy)) {
    const max = takeQuantity(scan, 'voltage', input)
    return max === undefined ? undefined : { max }
  }
  const min = takeQuantity(scan, 'voltage', input)
  if (min === undefined) return undefined
  if (scan.take(/\+/y)) return { min }
  return scan.take(/ (?:in|input)(?!\p{L})/iuy) ? { min, max: min } : undefined
}

function takeBalance(scan: Scanner): number | undefined {
  if (scan.take(/balanc(?:e|er|es|ing) (?:at )?/iuy)) return takeQuantity(scan, 'current', balancing)
  if (!scan.take(/(?=[\d.,]+ ?\p{L}* balanc)/iuy)) return undefined
  const balance_A = takeQuantity(scan, 'current', balancing)
  scan.take(/ balanc(?:e|er|ing)(?!\p{L})/iuy)
  return balance_A
}

function takeEfficiency(scan: Scanner): number | undefined {
  const efficiency = takeQuantity(scan, 'share', { phrase: 'an efficiency', min: 0.5, example: '85%' })
  if (efficiency !== undefined) scan.take(/ (?:efficient|efficiency)(?!\p{L})/iuy)
  return efficiency
}

/** Below the highest cell voltage a list of volts is cutoffs; above it, volts are the input's. */
function takeCutoffs(scan: Scanner): readonly number[] | undefined {
  const volts = scan.attempt(() =>
    takeList(scan, 'voltage', { narrower: { max: 1000, example: '4.20/4.35V' } }),
  )
  if (!volts || scan.take(/(?=\+| in(?:put)?(?!\p{L}))/iuy)) return undefined
  return [...new Set(volts)].sort((a, b) => a - b)
}

const currents: Part<Draft> = (scan, draft) => {
  if (draft.currents !== undefined) return false
  const read = takeCurrentSteps(scan)
  if (!read) return false
  draft.currents = read.steps
  if (read.assumed !== undefined) draft.assumed = read.assumed
  return true
}

const parts: readonly Part<Draft>[] = [
  once('needsBalanceLead', scan => (scan.take(needsLead) ? true : undefined)),
  once('balance_A', takeBalance),
  once('cells', takeCells),
  once('power_W', scan => takeQuantity(scan, 'power')),
  once('efficiency', takeEfficiency),
  once('input', takeInput),
  once('cutoffs_V', takeCutoffs),
  currents,
  once('named', scan => (scan.take(/(?:charger|steps?|settings?)(?!\p{L})/iuy) ? true : undefined)),
]

/** Reads the whole text as one charger. Throws a Problem for an unknown word, a range, or no current at all. */
export function readCharger(text: string): Read<Charger> {
  const scan = new Scanner(plainText(text))
  const draft: Draft = {}
  readParts(scan, parts, draft, wanted)
  const charger = finished(draft)
  if (charger) return charger
  throw new Problem({ what: 'That charger lacks its currents.', token: shortened(scan.text), ...wanted })
}

/**
 * Moves past a charger that stands in a sentence; false, and not moved, where there is none. One current
 * alone is none: the word "charger" or another part, a list or a range makes it one.
 */
export function takeCharger(scan: Scanner): boolean {
  const charger = scan.attempt(() => {
    const draft: Draft = {}
    takeParts(scan, parts, draft)
    const single = draft.currents?.kind === 'list' && draft.currents.steps_A.length === 1
    return single && Object.keys(draft).length === 1 ? undefined : finished(draft)
  })
  return charger !== undefined
}

function finished({ currents, cells, input, assumed, named: _, ...rest }: Draft): Read<Charger> | undefined {
  if (!currents) return undefined
  for (const volts of rest.cutoffs_V ?? []) checkedCutoff(volts)
  const value: Charger = {
    currents,
    ...rest,
    ...(cells?.min !== undefined && { minSeries: cells.min }),
    ...(cells?.max !== undefined && { maxSeries: cells.max }),
    ...(input?.min !== undefined && { minInput_V: input.min }),
    ...(input?.max !== undefined && { maxInput_V: input.max }),
  }
  return { value, assumed: assumed === undefined ? [] : [assumed] }
}

function checkedCutoff(volts: number): void {
  if (volts >= cutoffs.min && volts <= cutoffs.max) return
  throw new Problem({
    what: 'That voltage is neither a cutoff per cell nor an input range.',
    token: `${volts}V`,
    expected: `cutoffs from ${cutoffs.min} to ${cutoffs.max} V per cell, or the input as two ends`,
    example: volts > cutoffs.max ? '9-20V' : cutoffs.example,
  })
}

/** Canonical text; reading it gives the same charger. */
export function writeCharger(charger: Charger): string {
  const { minSeries, maxSeries, minInput_V, maxInput_V } = charger
  const words = [
    writeCurrentSteps(charger.currents),
    charger.power_W !== undefined && writeQuantity(charger.power_W, 'power'),
    window(minSeries, maxSeries, 'S', most => `${most}S`),
    window(minInput_V, maxInput_V, 'V', most => `up to ${most}V`),
    charger.efficiency !== undefined && writeQuantity(charger.efficiency, 'share'),
    charger.balance_A !== undefined && `balance ${writeQuantity(charger.balance_A, 'current')}`,
    charger.needsBalanceLead && 'needs balance lead',
    charger.cutoffs_V !== undefined && charger.cutoffs_V.length > 0 && `${charger.cutoffs_V.join('/')}V`,
  ]
  return words.filter(Boolean).join(' ')
}

function window(
  min: number | undefined,
  max: number | undefined,
  unit: string,
  upTo: (max: number) => string,
): string | undefined {
  if (min === undefined) return max === undefined ? undefined : upTo(max)
  if (max === undefined) return `${min}${unit}+`
  return min === max && unit === 'V' ? `${min}V input` : `${min}-${max}${unit}`
}
