// Where a charger stops by itself: never before a sound charge has ended, and not long after.

import fc from 'fast-check'
import { expect, it } from 'vitest'
import { chargerStops } from '../../../src/charging/setting/stops.ts'
import { timedCharge } from '../../../src/charging/setting/timed-charge.ts'
import { chemistries } from '../../../src/charging/things/chemistries.ts'
import { cases } from '../../support/cases.ts'
import { permitFor } from '../../support/judged.ts'

it('is a tenth above the label, and a quarter above the longest time in steps of five minutes', () => {
  const { capacity_Ah, timer_s } = chargerStops({ capacity_Ah: 1.5 }, 63 * 60)
  expect(capacity_Ah).toBeCloseTo(1.65)
  expect(timer_s).toBe(80 * 60)
})

it('lets every charge of a pack end by itself', () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...chemistries),
      fc.double({ min: 0.3, max: 8, noNaN: true }),
      fc.double({ min: 0.05, max: 0.8, noNaN: true }),
      (chemistry, capacity_Ah, soc) => {
        const pack = { chemistry, series: 3, parallel: 1, capacity_Ah }
        const timed = timedCharge(permitFor({ act: 'charge', pack, from: { kind: 'soc', soc } }))
        expect(timed.stops.capacity_Ah).toBeGreaterThan(timed.charge.charge_Ah)
        expect(timed.stops.timer_s).toBeGreaterThanOrEqual(timed.time_s.high * 1.25)
        expect(timed.stops.timer_s).toBeLessThan(timed.time_s.high * 1.25 + 300)
      },
    ),
    cases(60),
  )
})
