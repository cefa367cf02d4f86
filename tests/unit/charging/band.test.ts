// The bands of a charge: around its likely figures, the same each time, narrower by what is measured.

import fc from 'fast-check'
import { expect, test } from 'vitest'
import { type ChargeTimes, chargeTimeBand } from '../../../src/charging/setting/band.ts'
import type { ChargeRequest } from '../../../src/charging/simulation/charge.ts'
import { liFe, liIon } from '../../../src/charging/things/chemistries.ts'

const label: ChargeRequest = {
  pack: { chemistry: liIon, series: 4, parallel: 2, capacity_Ah: 5 },
  current_A: 2.5,
  from: { kind: 'soc', soc: 0.1 },
  target: { kind: 'voltage', perCell_V: 4.2 },
  termination_A: 0.25,
}
const widthOf = ({ time_s }: ChargeTimes) => time_s.high - time_s.low

test('holds the likely figures of any charge, and is the same each time', () => {
  const rate = fc.double({ min: 0.1, max: 15, noNaN: true })
  const start = fc.double({ min: 0, max: 0.99, noNaN: true })
  fc.assert(
    fc.property(rate, start, (current_A, soc) => {
      const request: ChargeRequest = { ...label, current_A, from: { kind: 'soc', soc } }
      const { charge, bands: ofFew, ...times } = chargeTimeBand(request)
      const further = ofFew()
      const again = chargeTimeBand(request)
      expect({ ...again, bands: again.bands() }).toEqual({ charge, ...times, bands: further })
      const bands = [
        [times.time_s, charge.duration_s],
        [further.timeToCutoff_s, charge.timeToCutoff_s],
        [further.charge_Ah, charge.charge_Ah],
        [further.heat_Wh, charge.heat_Wh],
      ] as const
      expect(further.warmest_C.low).toBeLessThanOrEqual(further.warmest_C.high)
      for (const [band, central_s] of bands) {
        expect(band.low).toBeLessThanOrEqual(central_s)
        expect(band.high).toBeGreaterThanOrEqual(central_s)
        expect(Number.isFinite(band.high) && band.low >= 0).toBe(true)
      }
    }),
  )
})

test('a measured capacity narrows the charge much, a reading of the resistance the time beside it', () => {
  const charged = ({ bands }: ChargeTimes) => bands().charge_Ah.high - bands().charge_Ah.low
  const withCapacity = chargeTimeBand({ ...label, measuredCapacity_Ah: 5 })
  expect(charged(withCapacity)).toBeLessThan(0.5 * charged(chargeTimeBand(label)))
  const pack = { ...label.pack, cellResistance_ohm: 0.012 }
  expect(widthOf(chargeTimeBand({ ...label, pack, measuredCapacity_Ah: 5 }))).toBeLessThan(0.9 * widthOf(withCapacity))
})

test('the time follows the measured capacity, not the label; what is lost of it is age, which draws out the end', () => {
  const less = chargeTimeBand({ ...label, measuredCapacity_Ah: 4 }).charge
  const { charge } = chargeTimeBand(label)
  expect(less.timeToCutoff_s).toBeLessThan(0.8 * charge.timeToCutoff_s)
  expect(less.duration_s - less.timeToCutoff_s).toBeGreaterThan(1.2 * (charge.duration_s - charge.timeToCutoff_s))
})

test('a start in resting volts widens it, as cells of one kind hold more and less at them', () => {
  const measured = { ...label, measuredCapacity_Ah: 5, pack: { ...label.pack, cellResistance_ohm: 0.02 } }
  const inVolts = chargeTimeBand({ ...measured, from: { kind: 'rest', perCell_V: 3.6 } })
  const inPercent = chargeTimeBand({ ...measured, from: { kind: 'soc', soc: inVolts.charge.startSoc } })
  expect(Math.abs(inPercent.charge.duration_s / inVolts.charge.duration_s - 1)).toBeLessThan(0.001)
  expect(widthOf(inVolts)).toBeGreaterThan(1.1 * widthOf(inPercent))
})

test('stays sharp where little is unknown, and is wide where volts say nothing: a LiFe pack at rest on its flat', () => {
  const pack = { chemistry: liFe, series: 4, parallel: 1, capacity_Ah: 2.3, cellResistance_ohm: 0.01 }
  const target = { kind: 'voltage', perCell_V: 3.6 } as const
  const share = (request: ChargeRequest) => {
    const times = chargeTimeBand(request)
    return widthOf(times) / times.charge.duration_s
  }
  const known = { pack, current_A: 2.3, termination_A: 0.23, measuredCapacity_Ah: 2.2, target } as const
  expect(share({ ...known, from: { kind: 'soc', soc: 0.1 } })).toBeLessThan(0.25)
  expect(share({ ...known, from: { kind: 'rest', perCell_V: 3.33 } })).toBeGreaterThan(0.6)
})

test('a charger that may end at a tenth or at a twentieth makes a band wider than one that is told', () => {
  const { termination_A: _, ...open } = { ...label, measuredCapacity_Ah: 5 }
  expect(widthOf(chargeTimeBand(open))).toBeGreaterThan(1.1 * widthOf(chargeTimeBand({ ...open, termination_A: 0.25 })))
})

test('cells that are charged hard warm themselves, and cold ones come to their cutoff sooner', () => {
  const gentle = chargeTimeBand({ ...label, current_A: 1 })
  const hard = chargeTimeBand({ ...label, current_A: 15 })
  const rise_K = ({ bands }: ChargeTimes) => bands().warmest_C.high - 23
  expect(rise_K(hard)).toBeGreaterThan(rise_K(gentle) + 5)
  const cutoff_s = (temperature_C: number) => chargeTimeBand({ ...label, temperature_C }).bands().timeToCutoff_s.high
  expect(cutoff_s(4)).toBeLessThan(cutoff_s(25))
})
