// Where chargers end: what is known of it moves the time, and narrows the band.

import { describe, expect, test } from 'vitest'
import { chargeTimeBand } from '../../../src/charging/setting/band.ts'
import { settingFor } from '../../../src/charging/setting/setting.ts'
import { chargeOf, timedCharge } from '../../../src/charging/setting/timed-charge.ts'
import { chargeEnds, endAt, endCurrent_A } from '../../../src/charging/things/charge-end.ts'
import { liIon } from '../../../src/charging/things/chemistries.ts'
import { permitFor } from '../../support/judged.ts'

test('goes by the set current or by the capacity, and never ends a slow charge before its taper', () => {
  expect(chargeEnds.map(end => endCurrent_A(end, 2, 1))).toEqual([0.2, 0.1, 0.1, 0.05])
  for (const end of chargeEnds) expect(endCurrent_A(end, 0.05, 5)).toBeLessThanOrEqual(0.005)
})

test('all kinds of charger stand among those of a band', () => {
  const drawn = Array.from({ length: 64 }, (_, index) => endAt((index + 0.5) / 64))
  expect(new Set(drawn)).toEqual(new Set(chargeEnds))
})

test('a club says once where its chargers end: later, for longer, and known better', () => {
  const pack = { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 3 }
  const timesIn = (house: object) => {
    const permit = permitFor({ act: 'charge', pack }, house)
    return chargeTimeBand({ ...chargeOf(permit, settingFor(permit)), measuredCapacity_Ah: 3 })
  }
  const [open, tenth, twentieth] = [timesIn({}), timesIn({ chargeEnd: 'tenth' }), timesIn({ chargeEnd: 'twentieth' })]
  expect(tenth.charge.duration_s / open.charge.duration_s).toBeCloseTo(1, 3)
  expect(twentieth.charge.duration_s).toBeGreaterThan(1.05 * tenth.charge.duration_s)
  expect(tenth.time_s.high).toBeLessThan(open.time_s.high)
})

describe('a charger that stops by its clock', () => {
  const pack = { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 3 }
  const permit = permitFor({ act: 'charge', pack })
  const byClock = (timer_s: number) => timedCharge(permit, { current_A: 1.5, measuredCapacity_Ah: 3, timer_s })
  const byCurrent = timedCharge(permit, { current_A: 1.5, measuredCapacity_Ah: 3 })

  test('before the taper has put in its current times that time, in every cell alike', () => {
    const { charge, time_s, bands } = byClock(3600)
    expect(charge.duration_s).toBeCloseTo(3600, 6)
    expect(charge.charge_Ah).toBeCloseTo(1.5, 2)
    expect(time_s.low).toBeCloseTo(3600, 3)
    expect(time_s.high).toBeCloseTo(3600, 3)
    expect(bands().charge_Ah.low).toBeGreaterThan(1.4)
    expect(bands().charge_Ah.high).toBeLessThan(1.6)
  })

  test('in the taper stops where the others would go on', () => {
    const timer_s = (byCurrent.charge.timeToCutoff_s + byCurrent.charge.duration_s) / 2
    const { charge } = byClock(timer_s)
    expect(charge.duration_s).toBeCloseTo(timer_s, 6)
    expect(charge.charge_Ah).toBeLessThan(byCurrent.charge.charge_Ah)
    expect(charge.stages.map(({ kind }) => kind)).toContain('constant voltage')
  })

  test('goes on past a tenth of the current, and puts in more', () => {
    const timer_s = byCurrent.charge.duration_s + 600
    const { charge } = byClock(timer_s)
    expect(charge.duration_s).toBeCloseTo(timer_s, 6)
    expect(charge.charge_Ah).toBeGreaterThan(byCurrent.charge.charge_Ah)
  })

  test('is set to some time', () => expect(() => byClock(0)).toThrow(/timer_s must be above 0/))
})

describe('a charger that steps down', () => {
  const pack = { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 3, cellResistance_ohm: 0.02 }
  const timesIn = (house: object, told: object = {}) =>
    timedCharge(permitFor({ act: 'charge', pack }, house), { current_A: 1.5, measuredCapacity_Ah: 3, ...told })
  const [held, stepped] = [timesIn({ chargeEnd: 'tenth' }), timesIn({ chargeEnd: 'steps' })]

  test('is alike to the cutoff, and takes longer from there as its steps lie below what held volts let through', () => {
    expect(stepped.charge.timeToCutoff_s / held.charge.timeToCutoff_s).toBeCloseTo(1, 3)
    expect(stepped.charge.stages.map(({ kind }) => kind)).toEqual(['constant current', 'steps down'])
    const [, steps] = stepped.charge.stages
    const [, hold] = held.charge.stages
    const pace = (stage = steps) => (stage?.charge_Ah ?? 0) / (stage?.duration_s ?? 1)
    expect(pace(steps)).toBeLessThan(pace(hold))
    const amps = [...new Set(stepped.charge.curve.map(({ current_A }) => current_A))]
    expect(amps).toEqual([1.5, 0.75, 0.375, 0.1875])
    expect(Math.max(...stepped.charge.curve.map(({ perCell_V }) => perCell_V))).toBeCloseTo(4.2, 6)
  })

  test('has a band of its own, about its time', () => {
    const { low, high } = stepped.time_s
    expect(low).toBeLessThan(stepped.charge.duration_s)
    expect(high).toBeGreaterThan(stepped.charge.duration_s)
    expect(high).not.toBe(held.time_s.high)
    expect((high - low) / stepped.charge.duration_s).toBeLessThan(0.4)
  })

  test('is meant for one charge as for a club, and a current that is told stands for it', () => {
    expect(timesIn({}, { end: 'steps' }).charge).toEqual(stepped.charge)
    const told = timesIn({ chargeEnd: 'steps' }, { termination_A: 0.15 }).charge
    expect(told.stages.map(({ kind }) => kind)).toEqual(['constant current', 'constant voltage'])
  })

  test('begins from the current that its watts have left at the cutoff', () => {
    const charger = { currents: { kind: 'list', steps_A: [0.5, 1.5] }, power_W: 16.8 } as const
    const { charge } = timedCharge(permitFor({ act: 'charge', pack, charger }), { current_A: 1.5, end: 'steps' })
    const last = charge.curve.filter(({ time_s }) => time_s > charge.timeToCutoff_s).map(({ current_A }) => current_A)
    expect(Math.max(...last)).toBeCloseTo(0.5, 9)
  })
})
