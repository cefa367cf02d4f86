// The charger's step nearest to the wanted current.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CurrentSteps } from '../../../src/charging/things/charger.ts'
import { nearestStep_A, neighbourStep_A } from '../../../src/charging/things/steps.ts'
import { cases } from '../../support/cases.ts'

const list = (...steps_A: number[]): CurrentSteps => ({ kind: 'list', steps_A })
const tenths: CurrentSteps = { kind: 'range', from_A: 0.1, to_A: 10, increment_A: 0.1 }

describe('nearestStep_A', () => {
  it.each([
    ['above the wanted one where that is nearer', list(1, 2, 3, 5), 0.65, 1.3, 1],
    ['below it where the limit is in the way', list(0.5, 1, 2), 0.9, 0.95, 0.5],
    ['the lower of two as near', list(1, 2), 1.5, 5, 1],
    ['on the limit itself', list(0.5, 1.44), 1.44, 1.44, 1.44],
    ['in a range', tenths, 0.72, 1.44, 0.7],
    ['in a range without the digits of binary fractions', tenths, 0.3, 0.3, 0.3],
    ['at the end of a range', tenths, 12, 12, 10],
    ['at the start of a range', tenths, 0.02, 0.15, 0.1],
  ])('takes the step %s', (_, currents, wanted_A, limit_A, expected_A) => {
    expect(nearestStep_A(currents, wanted_A, limit_A)).toBe(expected_A)
  })

  it('has none where all are above the limit', () => {
    expect(nearestStep_A(list(1, 2), 0.4, 0.9)).toBeUndefined()
    expect(nearestStep_A(tenths, 0.05, 0.09)).toBeUndefined()
  })

  it('agrees in a range with the list of all its steps', () => {
    const steps_A = Array.from({ length: 100 }, (_, index) => Number(((index + 1) / 10).toFixed(1)))
    const amps = fc.double({ min: 0.01, max: 12, noNaN: true })
    fc.assert(
      fc.property(amps, amps, (wanted_A, limit_A) => {
        expect(nearestStep_A(tenths, wanted_A, limit_A)).toBe(nearestStep_A(list(...steps_A), wanted_A, limit_A))
      }),
      cases(2000),
    )
  })
})

describe('neighbourStep_A', () => {
  it('goes one step up or down and stops at the ends', () => {
    expect(neighbourStep_A(list(0.5, 1, 2), 1, 1)).toBe(2)
    expect(neighbourStep_A(list(0.5, 1, 2), 1, -1)).toBe(0.5)
    expect(neighbourStep_A(list(0.5, 1, 2), 2, 1)).toBeUndefined()
    expect(neighbourStep_A(tenths, 0.7, 1)).toBe(0.8)
    expect(neighbourStep_A(tenths, 0.1, -1)).toBeUndefined()
  })
})
