import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/charging/envelope/judge.ts'
import { situationOf } from '../../../src/charging/situation/situation.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'
import { highestSetting_V, trimOf } from '../../../src/charging/upkeep/trim.ts'
import { someChemistry } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'

describe('a charger against a meter', () => {
  it.each([
    [4.2, 4.2, 'within tolerance'],
    [4.2, 4.22, 'within tolerance'],
    [4.2, 4.18, 'within tolerance'],
    [4.2, 4.221, 'charges high'],
    [4.2, 4.15, 'charges low'],
  ] as const)('shown %f V, measured %f V: %s', (shown_V, measured_V, verdict) => {
    expect(trimOf({ shown_V, measured_V }).kind).toBe(verdict)
  })

  it.each([
    [4.2, 4.2, 'go', undefined],
    [4.2, 4.21, 'go with care', 'gotAboveFull'],
    [4.2, 4.23, 'do not charge', 'gotTooMuch'],
    [4.2, 4.26, 'do not charge', 'gotHazard'],
    [4.2, 4.15, 'go with care', 'chargerOff'],
    [4.2, 4.31, 'do not charge', 'chargerFaulty'],
    [4.2, 3.9, 'do not charge', 'chargerFaulty'],
  ] as const)('shown %f V, measured %f V is judged: %s', (shown_V, measured_V, verdict, key) => {
    const pack = { chemistry: lipo, series: 1, parallel: 1, capacity_Ah: 1 }
    const told = { act: 'charge' as const, pack, meter: { shown_V, measured_V } }
    const judged = judge(situationOf(told, { house: {}, dangers: [], doubts: [] }))
    expect(judged.verdict).toBe(verdict)
    if (key) expect(judged.found.map(one => one.key)).toContain(key)
  })

  it('never has a setting that takes a cell above full, nor one above full itself', () => {
    fc.assert(
      fc.property(someChemistry, fc.double({ min: -0.5, max: 0.5, noNaN: true }), (chemistry, error_V) => {
        const full_V = chemistry.full_V.value
        const setting_V = highestSetting_V(full_V, error_V)
        expect(setting_V).toBeLessThanOrEqual(full_V)
        expect(setting_V + error_V).toBeLessThanOrEqual(full_V + 1e-6)
      }),
      cases(10_000),
    )
  })

  it('gives no more away than a hundredth', () => {
    expect(highestSetting_V(4.2, 0.03)).toBeCloseTo(4.17, 9)
    expect(highestSetting_V(4.2, -0.05)).toBeCloseTo(4.2, 9)
    expect(highestSetting_V(4.35, 0.025)).toBeCloseTo(4.32, 9)
  })
})
