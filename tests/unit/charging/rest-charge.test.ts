import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import { chargeAtRest, voltsAtRest } from '../../../src/charging/upkeep/rest-charge.ts'
import { chemistryName } from '../../support/arbitraries.ts'

describe('charge from resting volts', () => {
  it('lies inside its own band, from 0 to 1, and rises with the volts', () => {
    const volts = fc.double({ min: 2.5, max: 4.4, noNaN: true })
    fc.assert(
      fc.property(chemistryName, volts, volts, (name, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map(perCell_V =>
          chargeAtRest(chemistries[name], perCell_V),
        )
        if (!less || !more) throw new Error('two were made')
        for (const { soc, band } of [less, more]) {
          expect(band.low).toBeGreaterThanOrEqual(0)
          expect(band.high).toBeLessThanOrEqual(1)
          expect(soc).toBeGreaterThanOrEqual(band.low)
          expect(soc).toBeLessThanOrEqual(band.high)
        }
        expect(less.soc).toBeLessThanOrEqual(more.soc)
      }),
      { numRuns: 2000 },
    )
  })

  it('says that LiFe is flat and LiPo is not', () => {
    expect(chargeAtRest(chemistries.LiFe, 3.3).telling).toBe('flat')
    expect(chargeAtRest(chemistries.LiPo, 4.0).telling).toBe('well')
    expect(chargeAtRest(chemistries['Li-ion'], 3.7).telling).toBe('roughly')
  })

  it('is full at full', () => {
    for (const chemistry of Object.values(chemistries)) {
      expect(chargeAtRest(chemistry, chemistry.full_V.value).soc).toBeCloseTo(1, 9)
    }
  })
})

describe('resting volts from charge', () => {
  it('gives the charge back, inside a band that holds it', () => {
    fc.assert(
      fc.property(chemistryName, fc.double({ min: 0, max: 1, noNaN: true }), (name, soc) => {
        const chemistry = chemistries[name]
        const { perCell_V, band } = voltsAtRest(chemistry, soc)
        expect(chargeAtRest(chemistry, perCell_V).soc).toBeCloseTo(soc, 6)
        expect(band.low).toBeLessThanOrEqual(perCell_V)
        expect(band.high).toBeGreaterThanOrEqual(perCell_V)
        expect(band.high).toBeLessThanOrEqual(chemistry.full_V.value)
      }),
      { numRuns: 500 },
    )
  })
})
