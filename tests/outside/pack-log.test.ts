// The charge log against common practice and published cells; measured-charges.test.ts has what charges tell of the next.

import { describe, expect, it } from 'vitest'
import { liFe, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import { interpolate } from '../../src/charging/things/curve.ts'
import * as published from '../../src/charging/things/published-curves.ts'
import { capacityLeft } from '../../src/charging/upkeep/age-signs.ts'
import { capacityReading } from '../../src/charging/upkeep/charge-note.ts'
import { meterCorrection } from '../../src/charging/upkeep/flight-meter.ts'

describe('the verdict', () => {
  it('retires a pack under 80 % of what it held, and calls it ageing under 90 % (common practice)', () => {
    expect(capacityLeft.value).toEqual({ ageing: 0.9, retire: 0.8 })
  })
})

describe('the capacity told by volts at rest', () => {
  // The bands are made of these cells' curves and of others: this says that they are applied the right way round.
  const cells = [
    ...published.liIonCells.map(cell => [liIon, cell] as const),
    ...published.liFeCells.map(cell => [liFe, cell] as const),
    [lipo, published.lcoPouch] as const,
  ]

  it.each(cells)('of a $0.name cell lies in its band: $1', (chemistry, { value: { soc, perCell_V } }) => {
    const pack = { chemistry, series: 1, parallel: 1, capacity_Ah: 1 }
    const { restFloor_V, full_V } = chemistry
    for (const start_V of [restFloor_V.value, restFloor_V.value + 0.05, restFloor_V.value + 0.1]) {
      const charge_Ah = interpolate(perCell_V, soc, full_V.value) - interpolate(perCell_V, soc, start_V)
      const reading = capacityReading(pack, {
        charge_Ah: Math.min(1, charge_Ah),
        from: { kind: 'rest', perCell_V: start_V },
        to: { kind: 'rest', perCell_V: full_V.value },
      })
      if (!reading) continue
      expect(reading.band_Ah.low).toBeLessThanOrEqual(1.03)
      expect(reading.band_Ah.high).toBeGreaterThanOrEqual(0.97)
    }
  })
})

describe('the count of a flight controller', () => {
  it('is mended by new = old × put back ÷ counted where more reads more, by its inverse where more reads less (from memory: how flight firmware of either kind describes it)', () => {
    const { scale } = meterCorrection([{ counted_Ah: 1.0, putBack_Ah: 1.25 }], 400) ?? {}
    expect(scale).toEqual({ raising: 500, lowering: 320 })
  })
})
