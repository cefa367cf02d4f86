import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { chemistries, liFe, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import { chargeAtRest, voltsAtRest } from '../../../src/charging/upkeep/rest-charge.ts'
import { someChemistry } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'

describe('charge from resting volts', () => {
  it('lies inside its own band, from 0 to 1, and rises with the volts', () => {
    const volts = fc.double({ min: 2.5, max: 4.4, noNaN: true })
    fc.assert(
      fc.property(someChemistry, volts, volts, (chemistry, a, b) => {
        const [less, more] = [Math.min(a, b), Math.max(a, b)].map(perCell_V => chargeAtRest(chemistry, perCell_V))
        if (!less || !more) throw new Error('two were made')
        for (const { soc, band } of [less, more]) {
          expect(band.low).toBeGreaterThanOrEqual(0)
          expect(band.high).toBeLessThanOrEqual(1)
          expect(soc).toBeGreaterThanOrEqual(band.low)
          expect(soc).toBeLessThanOrEqual(band.high)
        }
        expect(less.soc).toBeLessThanOrEqual(more.soc)
      }),
      cases(2000),
    )
  })

  it('says that LiFe is flat and LiPo is not', () => {
    expect(chargeAtRest(liFe, 3.3).telling).toBe('flat')
    expect(chargeAtRest(lipo, 4.0).telling).toBe('well')
    expect(chargeAtRest(liIon, 3.7).telling).toBe('roughly')
  })

  it('is full at full', () => {
    for (const chemistry of chemistries) {
      expect(chargeAtRest(chemistry, chemistry.full_V.value).soc).toBeCloseTo(1, 9)
    }
  })
})

describe('resting volts from charge', () => {
  it('gives the charge back, inside a band that holds it', () => {
    fc.assert(
      fc.property(someChemistry, fc.double({ min: 0, max: 1, noNaN: true }), (chemistry, soc) => {
        const { perCell_V, band } = voltsAtRest(chemistry, soc)
        expect(chargeAtRest(chemistry, perCell_V).soc).toBeCloseTo(soc, 6)
        expect(band.low).toBeLessThanOrEqual(perCell_V)
        expect(band.high).toBeGreaterThanOrEqual(perCell_V)
        expect(band.high).toBeLessThanOrEqual(chemistry.full_V.value)
      }),
      cases(500),
    )
  })
})
