// The band of a charge time: around the central time, never too wide, narrower by what is measured.

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type ChargeTimes, chargeTimeBand } from '../../../src/charging/setting/band.ts'
import type { ChargeRequest } from '../../../src/charging/simulation/charge.ts'
import { liIon } from '../../../src/charging/things/chemistries.ts'

const label: ChargeRequest = {
  pack: { chemistry: liIon, series: 4, parallel: 2, capacity_Ah: 5 },
  current_A: 2.5,
  from: { kind: 'soc', soc: 0.1 },
  target: { kind: 'voltage', perCell_V: 4.2 },
}
const widthOf = ({ time_s }: ChargeTimes) => time_s.high - time_s.low

test('holds the central time and goes at most 20 % either way', () => {
  const rate = fc.double({ min: 0.1, max: 15, noNaN: true })
  const start = fc.double({ min: 0, max: 0.99, noNaN: true })
  fc.assert(
    fc.property(rate, start, (current_A, soc) => {
      const { charge, time_s, timeToCutoff_s } = chargeTimeBand({ ...label, current_A, from: { kind: 'soc', soc } })
      const bands = [
        [time_s, charge.duration_s],
        [timeToCutoff_s, charge.timeToCutoff_s],
      ] as const
      for (const [band, central_s] of bands) {
        expect(band.low).toBeLessThanOrEqual(central_s)
        expect(band.high).toBeGreaterThanOrEqual(central_s)
        expect(band.high).toBeLessThanOrEqual(central_s * 1.2 + 1e-9)
        expect(band.low).toBeGreaterThanOrEqual(central_s * 0.8 - 1e-9)
      }
    }),
  )
})

test('a measured resistance narrows it, a measured capacity much more, both most', () => {
  const reading = { ...label.pack, cellResistance_ohm: 0.02 }
  const fromLabel = widthOf(chargeTimeBand(label))
  const withResistance = widthOf(chargeTimeBand({ ...label, pack: reading }))
  const withCapacity = widthOf(chargeTimeBand({ ...label, measuredCapacity_Ah: 5 }))
  const withBoth = widthOf(chargeTimeBand({ ...label, pack: reading, measuredCapacity_Ah: 5 }))
  expect(withResistance).toBeLessThan(fromLabel)
  expect(withCapacity).toBeLessThan(0.6 * fromLabel)
  expect(withBoth).toBeLessThanOrEqual(withCapacity)
})

test('the time follows the measured capacity, not the label', () => {
  const less = chargeTimeBand({ ...label, measuredCapacity_Ah: 4 }).charge.duration_s
  expect(less).toBeLessThan(0.9 * chargeTimeBand(label).charge.duration_s)
})

test('a start in resting volts widens it where the curve is flat, to the shorter side most', () => {
  const measured = { ...label, measuredCapacity_Ah: 5, pack: { ...label.pack, cellResistance_ohm: 0.02 } }
  const inVolts = chargeTimeBand({ ...measured, from: { kind: 'rest', perCell_V: 3.6 } })
  const { charge, time_s } = inVolts
  const inPercent = chargeTimeBand({ ...measured, from: { kind: 'soc', soc: charge.startSoc } })
  expect(inPercent.charge.duration_s).toBeCloseTo(charge.duration_s, 6)
  expect(time_s.low).toBeLessThan(inPercent.time_s.low)
  expect(time_s.high).toBeGreaterThan(inPercent.time_s.high)
})
