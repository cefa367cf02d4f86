import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { drain } from '../../../src/charging/simulation/drain.ts'
import { drainCurve } from '../../../src/charging/simulation/drain-curve.ts'
import { batteryStore } from '../../../src/charging/things/battery-store.ts'
import { liIon } from '../../../src/charging/things/chemistries.ts'
import { noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import { cases } from '../../support/cases.ts'

const store = batteryStore({ chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 5 }, noHouseLimits, 1)

describe('the voltage of a source under load', () => {
  it('starts at rest, sags with the power and never goes below the floor', () => {
    const draw = fc.record({
      power_W: fc.double({ min: 0.5, max: 80, noNaN: true }),
      duration_s: fc.double({ min: 10, max: 2000, noNaN: true }),
    })
    fc.assert(
      fc.property(fc.array(draw, { minLength: 1, maxLength: 6 }), fc.integer({ min: 1, max: 12 }), (draws, times) => {
        const points = drainCurve(store, draws, times)
        expect(points[0]).toEqual({ time_s: 0, voltage_V: store.rest_V(1) })
        expect(points.filter(({ voltage_V }) => voltage_V < store.loadFloor_V - 1e-9)).toEqual([])
        expect(points.length).toBeLessThanOrEqual(1 + draws.length * times)
      }),
      cases(300),
    )
  })

  it('ends where the drain of all the draws ends', () => {
    const draws = [
      { power_W: 20, duration_s: 1200 },
      { power_W: 8, duration_s: 600 },
    ]
    const points = drainCurve(store, draws, 3)
    const whole = drain(store, 1, [...draws, ...draws, ...draws])
    expect(whole.completed).toBe(true)
    expect(points.at(-1)?.time_s).toBe(3 * 1800)
    expect(Math.min(...points.map(({ voltage_V }) => voltage_V))).toBeCloseTo(whole.lowest_V, 9)
  })
})
