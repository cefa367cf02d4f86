// The currents that a charger offers: `0.3/0.8/1.5/3A`, or `0.1-10A by 0.1`.

import type { CurrentSteps } from '../../charging/things/charger.ts'
import type { Said } from '../../ground/locale.ts'
import { problemAt } from '../../ground/plain-text.ts'
import { quantityOf, takeUnit, writeQuantity } from '../quantities/quantity.ts'
import { takeList, takeRange } from '../quantities/ranges.ts'
import { takeNumeral } from '../scan/number.ts'
import type { Scanner } from '../scan/scanner.ts'
import { currentsTaken, incrementPhrase, incrementTooWide, rangeAndIncrement, stepTaken } from './charger.words.ts'

/** Chargers set by a range step by this much: common practice. */
const usualIncrement_A = 0.1
const incrementWord = /,? (?:by|in|in steps of|steps? of|steps?) /iuy
const stepsWord = / steps?(?!\p{L})/iuy

export interface ReadSteps {
  readonly steps: CurrentSteps
  readonly assumed?: Said
}

export function takeCurrentSteps(scan: Scanner): ReadSteps | undefined {
  return takeSteppedRange(scan) ?? takeStepList(scan)
}

function takeStepList(scan: Scanner): ReadSteps | undefined {
  const currents_A = takeList(scan, 'current', { spaced: true })
  if (!currents_A) return undefined
  return { steps: { kind: 'list', steps_A: [...new Set(currents_A)].sort((a, b) => a - b) } }
}

function takeSteppedRange(scan: Scanner): ReadSteps | undefined {
  const start = scan.at
  const range = takeRange(scan, 'current')
  if (!range) return undefined
  const { from: from_A, to: to_A } = range
  const given_A = takeIncrement(scan)
  const increment_A = given_A ?? usualIncrement_A
  if (increment_A > to_A - from_A) {
    throw problemAt(scan.text.slice(start, scan.at), incrementTooWide, {
      expected: rangeAndIncrement,
      example: '0.1-10A by 0.1',
    })
  }
  return {
    steps: { kind: 'range', from_A, to_A, increment_A },
    assumed: given_A === undefined ? stepTaken(usualIncrement_A) : undefined,
  }
}

function takeIncrement(scan: Scanner): number | undefined {
  return scan.attempt(() => {
    if (!scan.take(incrementWord)) return undefined
    const numeral = takeNumeral(scan)
    if (numeral === undefined) return undefined
    const increment_A = quantityOf(numeral, takeUnit(scan, 'current') ?? 'A', 'current', {
      min: 0.001,
      max: 10,
      phrase: incrementPhrase,
      example: '0.1A',
    })
    scan.take(stepsWord)
    return increment_A
  })
}

/** A charger told by its watts alone offers a tenth of them in A, within reason: common practice. */
export function usualSteps(power_W: number): ReadSteps {
  const to_A = Math.min(20, Math.max(1, Math.round(power_W / 10)))
  const steps: CurrentSteps = { kind: 'range', from_A: usualIncrement_A, to_A, increment_A: usualIncrement_A }
  return { steps, assumed: currentsTaken(power_W, usualIncrement_A, to_A) }
}

export function writeCurrentSteps(steps: CurrentSteps): string {
  if (steps.kind === 'list') return `${steps.steps_A.join('/')}A`
  const { from_A, to_A, increment_A } = steps
  return `${from_A}-${writeQuantity(to_A, 'current')} by ${increment_A}`
}
