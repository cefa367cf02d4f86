// Cells that lie apart: how gently they go, and what balancing adds to the time.

import { describe, expect, it } from 'vitest'
import { evening } from '../../../src/charging/setting/balancing.ts'
import { settingFor } from '../../../src/charging/setting/setting.ts'
import { timedCharge } from '../../../src/charging/setting/timed-charge.ts'
import type { Told } from '../../../src/charging/situation/situation.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'
import { socAt } from '../../../src/charging/things/curve.ts'
import { judged, permitFor } from '../../support/judged.ts'

const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 1.5 }
const told: Told = { act: 'charge', pack, from: { kind: 'rest', perCell_V: 3.75 } }
const timed = (apart_V: number | undefined, details = {}, more: Partial<Told> = {}) =>
  timedCharge(permitFor({ ...told, ...more, apart_V }), { current_A: 0.75, ...details })

describe('cells that lie apart', () => {
  it.each([
    [0.03, undefined],
    [0.031, 0.5],
    [0.1, 0.5],
    [0.101, 0.2],
  ])('by %f V go with %s C', (apart_V, rate_C) => expect(evening(apart_V, 1)?.rate_C).toBe(rate_C))

  it('are advised that, and never more than the cold or the club allow', () => {
    expect(settingFor(permitFor({ ...told, apart_V: 0.05 })).current_A).toBe(0.75)
    expect(settingFor(permitFor({ ...told, apart_V: 0.15 })).current_A).toBe(0.3)
    expect(settingFor(permitFor({ ...told, apart_V: 0.05 }, { maxRate_C: { LiPo: 0.3 } })).current_A).toBe(0.45)
  })

  it.each([
    [0.03, 'go'],
    [0.04, 'go with care'],
    [0.2, 'go with care'],
    [0.201, 'do not charge'],
  ])('by %f V are judged, wherever the pack stands: %s', (apart_V, verdict) => {
    expect(judged({ ...told, apart_V }).verdict).toBe(verdict)
    expect(judged({ act: 'charge', pack, apart_V }).verdict).toBe(verdict)
  })
})

describe('a charge of them', () => {
  const surplus_Ah = (socAt(lipo, 3.78) - socAt(lipo, 3.72)) * 1.5

  it('takes what the balancer needs for the charge between them, at its end', () => {
    const [even, apart] = [timed(undefined), timed(0.06, { balance_A: 0.2 })]
    const more_s = (surplus_Ah * 3600) / 0.2
    expect(more_s).toBeGreaterThan(600)
    expect(apart.charge.duration_s).toBeCloseTo(even.charge.duration_s + more_s, 6)
    expect(apart.time_s.high).toBeCloseTo(even.time_s.high + more_s, 6)
    expect(apart.time_s.low).toBe(Math.max(even.time_s.low, more_s))
    expect(apart.charge.stages.at(-1)).toMatchObject({ kind: 'balancing', charge_Ah: 0 })
    expect(apart.charge.charge_Ah).toBe(even.charge.charge_Ah)
    expect(apart.charge.curve.at(-1)).toMatchObject({ current_A: 0, time_s: apart.charge.duration_s })
    expect(apart.stops.timer_s).toBeGreaterThan(even.stops.timer_s)
  })

  it("goes by the charger's own balancer, else from 0.3 A at the earliest to 0.1 A", () => {
    const charger = { currents: { kind: 'list', steps_A: [0.75] }, balance_A: 0.05 } as const
    const slow_s = (surplus_Ah * 3600) / 0.05
    expect(timed(0.06, {}, { charger }).time_s.low).toBeCloseTo(slow_s, 6)
    const { balancing } = timed(0.06)
    expect(balancing?.duration_s).toBeCloseTo((surplus_Ah * 3600) / 0.1, 6)
    expect(balancing?.least_s).toBeCloseTo((surplus_Ah * 3600) / 0.3, 6)
  })

  it.each([
    ['where they are balanced', timed(0.02)],
    ['of one cell', timed(0.06, {}, { pack: { ...pack, series: 1 } })],
    ['where a clock ends it', timed(0.06, { timer_s: 1800 })],
  ])('has nothing to balance %s', (_, { balancing, charge }) => {
    expect(balancing).toBeUndefined()
    expect(charge.stages.map(({ kind }) => kind)).not.toContain('balancing')
  })
})
