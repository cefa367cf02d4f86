// The parts that a charger is written in.

import type { CurrentSteps } from '../../charging/things/charger.ts'
import type { Said } from '../../ground/locale.ts'
import { problemAt } from '../../ground/plain-text.ts'
import { mostSeries } from '../parts/draft.ts'
import { takeQuantity } from '../quantities/quantity.ts'
import { takeList, takeRange } from '../quantities/ranges.ts'
import { once, type Part } from '../scan/parts.ts'
import type { Scanner } from '../scan/scanner.ts'
import * as texts from './charger.words.ts'
import { takeCurrentSteps } from './current-steps.ts'

export const cutoffs = { phrase: texts.cutoffsPhrase, min: 2.5, max: 4.5, example: '4.20/4.35V' }
const input = { phrase: texts.inputPhrase, min: 2, max: 60, example: '10-26V' }
const balancing = { phrase: texts.balancePhrase, min: 0.01, max: 10, example: 'balance 0.3A' }

interface Window {
  readonly min?: number
  readonly max?: number
}

export interface ChargerDraft {
  currents?: CurrentSteps
  power_W?: number
  cells?: Window
  input?: Window
  efficiency?: number
  balance_A?: number
  needsBalanceLead?: true
  cutoffs_V?: readonly number[]
  assumed?: Said
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
  throw problemAt(token, texts.noSuchCells, { expected: texts.cellsOfCharger(mostSeries), example: '1-4S' })
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
  const efficiency = takeQuantity(scan, 'share', { phrase: texts.efficiencyPhrase, min: 0.5, example: '85%' })
  if (efficiency !== undefined) scan.take(/ (?:efficient|efficiency)(?!\p{L})/iuy)
  return efficiency
}

/** Below the highest cell voltage a list of volts is cutoffs; above it, volts are the input's. */
function takeCutoffs(scan: Scanner): readonly number[] | undefined {
  const volts = scan.attempt(() => takeList(scan, 'voltage', { narrower: { max: 1000, example: '4.20/4.35V' } }))
  if (!volts || scan.take(/(?=\+| in(?:put)?(?!\p{L}))/iuy)) return undefined
  return [...new Set(volts)].sort((a, b) => a - b)
}

const currents: Part<ChargerDraft> = (scan, draft) => {
  if (draft.currents !== undefined) return false
  const read = takeCurrentSteps(scan)
  if (!read) return false
  draft.currents = read.steps
  draft.assumed = read.assumed
  return true
}

export const chargerParts: readonly Part<ChargerDraft>[] = [
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
