import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { highestSetting_V, judgeTrim } from '../../../src/charging/upkeep/trim.ts'
import { someChemistry } from '../../support/arbitraries.ts'

describe('a charger against a meter', () => {
  it.each([
    [4.2, 4.2, 'within tolerance'],
    [4.2, 4.22, 'within tolerance'],
    [4.2, 4.18, 'within tolerance'],
    [4.2, 4.221, 'charges high'],
    [4.2, 4.15, 'charges low'],
    [4.2, 4.31, 'faulty'],
    [4.2, 3.9, 'faulty'],
  ] as const)('shown %f V, measured %f V: %s', (shown_V, measured_V, verdict) => {
    expect(judgeTrim(shown_V, measured_V).verdict).toBe(verdict)
  })

  it('never has a setting that takes a cell above full, nor one above full itself', () => {
    fc.assert(
      fc.property(someChemistry, fc.double({ min: -0.5, max: 0.5, noNaN: true }), (chemistry, error_V) => {
        const full_V = chemistry.full_V.value
        const setting_V = highestSetting_V(full_V, error_V)
        expect(setting_V).toBeLessThanOrEqual(full_V)
        expect(setting_V + error_V).toBeLessThanOrEqual(full_V + 1e-6)
      }),
      { numRuns: 10_000 },
    )
  })

  it('gives no more away than a hundredth', () => {
    expect(highestSetting_V(4.2, 0.03)).toBeCloseTo(4.17, 9)
    expect(highestSetting_V(4.2, -0.05)).toBeCloseTo(4.2, 9)
    expect(highestSetting_V(4.35, 0.025)).toBeCloseTo(4.32, 9)
  })
})
