// Energy by hand-worked examples. The formulas are textbook: P = U I, W = P t, R I² for heat; a battery that gives P
// through its resistance R settles at I = (U - sqrt(U² - 4 R P)) / 2R. The numbers beside each check are worked on paper.

import { describe, expect, it } from 'vitest'
import { settingFor } from '../../src/charging/setting/setting.ts'
import { drain } from '../../src/charging/simulation/drain.ts'
import { supplyOf } from '../../src/charging/simulation/supply-run.ts'
import type { BatteryStore } from '../../src/charging/things/battery-store.ts'
import { lipo } from '../../src/charging/things/chemistries.ts'
import { permitFor } from '../support/judged.ts'

/** 12 V whatever its charge, 0.1 Ω, 10 Ah: easy to follow on paper. */
const flat: BatteryStore = {
  capacity_Ah: 10,
  resistance_ohm: 0.1,
  leads_ohm: 0,
  soc: 1,
  loadFloor_V: 0,
  restFloor_V: 0,
  rest_V: () => 12,
  energyBetween_Wh: (from, to) => 120 * (to - from),
}

describe('energy', () => {
  it('20 V at 5 A carries 100 W', () => {
    const offers = [{ voltage_V: 20, current_A: 5 }]
    const pack = { chemistry: lipo, series: 6, parallel: 1, capacity_Ah: 5 } as const
    const setting = settingFor(permitFor({ act: 'charge', pack, source: { kind: 'supply', offers } }))
    expect(setting.feed?.power_W).toBe(100)
    // 100 W x 0.85 = 85 W into the pack; 85 / 25.2 V = 3.37 A.
    expect(setting.current_A).toBe(3.37)
  })

  it('a charger of 85 % that gives 1 A at 12.6 V draws 14.82 W, from 12 V 1.235 A', () => {
    // 12.6 W / 0.85 = 14.8235 W; / 12 V = 1.2353 A.
    const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 1 } as const
    const offers = [{ voltage_V: 12, current_A: 5 }]
    const setting = settingFor(permitFor({ act: 'charge', pack, source: { kind: 'supply', offers } }))
    expect(setting).toMatchObject({ current_A: 1 })
    expect(setting.input_W).toBeCloseTo(14.8235, 4)
    expect(setting.input_A).toBeCloseTo(1.2353, 4)
  })

  it('110 W for half an hour from 12 V behind 0.1 Ω take 5 Ah: 55 Wh out, 5 Wh of heat', () => {
    // I: (12 - I/10) I = 110 gives I = 10 A (and 110 A); sag 1 V; heat 0.1 x 10² = 10 W; 10 W x 0.5 h = 5 Wh.
    const run = drain(flat, 1, [{ power_W: 110, duration_s: 1800 }])
    expect(run.completed).toBe(true)
    expect(run.soc).toBeCloseTo(0.5, 9)
    expect(run.delivered_Wh).toBeCloseTo(55, 9)
    expect(run.loss_Wh).toBeCloseTo(5, 9)
    expect(run.lowest_V).toBeCloseTo(11, 9)
  })

  it('a battery gives no more than U² / 4R: 360 W here', () => {
    expect(drain(flat, 1, [{ power_W: 359, duration_s: 1 }]).completed).toBe(true)
    expect(drain(flat, 1, [{ power_W: 361, duration_s: 1 }]).completed).toBe(false)
  })

  it('a power bank of 74 Wh gives 62.9 Wh: six charges of 10 Wh, and 2.9 Wh are left', () => {
    const run = supplyOf({ kind: 'power bank', label_Wh: 74 }, undefined, [{ power_W: 10, duration_s: 3600 }], {})
    expect(run.most).toBe(6)
    expect(run.after(6).left_Wh).toBeCloseTo(2.9, 9)
    // 60 Wh / 0.85 = 70.588 Wh out of its cells, 10.588 Wh lost.
    expect(run.after(6).sourceLoss_Wh).toBeCloseTo(10.588, 3)
  })

  it('one that is to keep 40 % of 74 Wh gives 37.7 Wh: three charges of 10 Wh', () => {
    const draws = [{ power_W: 10, duration_s: 3600 }]
    const run = supplyOf({ kind: 'power bank', label_Wh: 74 }, undefined, draws, { sourceKeeps: 0.4 })
    expect(run.most).toBe(3)
    expect(run.after(3).left_Wh).toBeCloseTo(7.74, 9)
    expect(
      supplyOf({ kind: 'power bank', label_Wh: 74 }, undefined, draws, { sourceSoc: 0.3, sourceKeeps: 0.4 }).most,
    ).toBe(0)
  })
})
