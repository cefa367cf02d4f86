// How warm cells grow under charge, against what was measured, and what warmth does to a charge.

import { expect, test } from 'vitest'
import { chargeTimeBand } from '../../src/charging/setting/band.ts'
import { lipo } from '../../src/charging/things/chemistries.ts'

const charged = (rate_C: number, temperature_C: number) =>
  chargeTimeBand({
    pack: { chemistry: lipo, series: 1, parallel: 1, capacity_Ah: 5.45, cellClass: 'high drain' },
    current_A: rate_C * 5.45,
    from: { kind: 'soc', soc: 0 },
    target: { kind: 'voltage', perCell_V: 4.2 },
    temperature_C,
  })

test('a pouch of 5.45 Ah at 4C from 25 °C came to about 50 °C (UW-Madison, SAE 2023-01-0522), at 1C to no 40', () => {
  const { warmest_C } = charged(4, 25).bands()
  expect(warmest_C.low).toBeLessThan(50)
  expect(warmest_C.high).toBeGreaterThan(50)
  expect(charged(1, 25).bands().warmest_C.high).toBeLessThan(40)
})

test('warm cells come to their cutoff later and end sooner, cold ones the other way round', () => {
  const [cold, room, warm] = [charged(1, 4), charged(1, 25), charged(1, 43)]
  expect(cold.charge.timeToCutoff_s).toBeLessThan(room.charge.timeToCutoff_s)
  expect(warm.charge.timeToCutoff_s).toBeGreaterThan(room.charge.timeToCutoff_s)
  expect(cold.charge.duration_s).toBeGreaterThan(room.charge.duration_s)
  expect(warm.charge.duration_s).toBeLessThan(room.charge.duration_s)
})
