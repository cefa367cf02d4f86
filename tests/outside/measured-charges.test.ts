// Simulated charges against charges measured on real cells, from the open datasets that charge-runs.ts cites.

import { describe, expect, test } from 'vitest'
import { chargeTimeBand } from '../../src/charging/setting/band.ts'
import { lipo } from '../../src/charging/things/chemistries.ts'
import { chargeRuns, datasets } from './charge-runs.ts'
import { bestFactor, errorsOf, leaveOneOut, requestOf } from './resistance-fit.ts'

// What is fitted on these runs: one number, how much more resistance a long charge meets than a short reading
// shows (all runs with a reading), and how it is shared among series, fast and slow part. Two more things come
// from them: the LiHV curve from melasta_hv_step06, and the resistance of each chemistry where no reading is
// given. The phone cell is no part of the fit. What the fit is worth on cells it has not seen, the
// leave-one-out check says.

describe('capacity and resistance known', () => {
  test.each(chargeRuns)('$id: times to cutoff and to the end within 5 %', run => {
    for (const error of errorsOf(run)) expect(Math.abs(error)).toBeLessThan(0.05)
  })

  test('the median error is within 2 %', () => {
    const errors = chargeRuns
      .flatMap(run => errorsOf(run))
      .map(Math.abs)
      .sort((a, b) => a - b)
    expect(errors[Math.ceil(errors.length / 2)]).toBeLessThan(0.02)
  })

  test.each(chargeRuns)('$id: the measured times lie inside the band, and the band is narrower', run => {
    const known = chargeTimeBand(requestOf(run))
    const { measuredCapacity_Ah: _, ...unmeasured } = requestOf(run)
    const { cellResistance_ohm: __, ...plainPack } = unmeasured.pack
    const label = chargeTimeBand({ ...unmeasured, pack: plainPack })
    expectInside(run.timeToCutoff_s, known.timeToCutoff_s)
    expectInside(run.timeToTermination_s, known.time_s)
    expect(relativeWidth(known)).toBeLessThan(0.6 * relativeWidth(label))
  })
})

describe('the fit', () => {
  test('is the best for these runs', () => {
    expect(bestFactor()).toBeCloseTo(1, 1)
  })

  test.each(leaveOneOut())('made without $dataset it keeps that dataset within 5 %', ({ errors }) => {
    for (const error of errors) expect(Math.abs(error)).toBeLessThan(0.05)
  })

  test('a lithium cobalt oxide prismatic asked as LiPo is within 5 % too', () => {
    for (const run of chargeRuns.filter(({ dataset }) => dataset === 'prismatic')) {
      const request = requestOf(run)
      const { charge } = chargeTimeBand({ ...request, pack: { ...request.pack, chemistry: lipo } })
      expect(Math.abs(charge.timeToCutoff_s / run.timeToCutoff_s - 1)).toBeLessThan(0.05)
      expect(Math.abs(charge.duration_s / run.timeToTermination_s - 1)).toBeLessThan(0.05)
    }
  })
})

describe('from the label alone', () => {
  test.each(chargeRuns)('$id: the measured times lie inside a band of at most 20 % either way', run => {
    const { dataset, nameplate_Ah, cutoff_V, current_A, start, termination_A } = run
    const { charge, time_s, timeToCutoff_s } = chargeTimeBand({
      pack: { chemistry: datasets[dataset].chemistry, series: 1, parallel: 1, capacity_Ah: nameplate_Ah },
      current_A,
      from: { kind: 'soc', soc: start },
      target: { kind: 'voltage', perCell_V: cutoff_V },
      termination_A,
    })
    expectInside(run.timeToCutoff_s, timeToCutoff_s)
    expectInside(run.timeToTermination_s, time_s)
    expect(time_s.high).toBeLessThanOrEqual(1.2001 * charge.duration_s)
    expect(time_s.low).toBeGreaterThanOrEqual(0.7999 * charge.duration_s)
  })
})

function expectInside(measured: number, band: { low: number; high: number }): void {
  expect(measured).toBeGreaterThanOrEqual(band.low)
  expect(measured).toBeLessThanOrEqual(band.high)
}

function relativeWidth({ charge, time_s }: ReturnType<typeof chargeTimeBand>): number {
  return (time_s.high - time_s.low) / charge.duration_s
}
