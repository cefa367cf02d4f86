import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { horizontal, vertical } from '../../../src/charts/drawing/ends.ts'
import { endOf, roundSteps, scale } from '../../../src/charts/drawing/scale.ts'
import { logChart } from '../../../src/charts/log-chart.ts'
import { chargeSample, locale, own } from './samples.ts'

const spans = fc
  .tuple(fc.integer({ min: -1e9, max: 1e9 }), fc.integer({ min: 1, max: 1e9 }))
  .map(([from, wide]) => [from / 1000, (from + wide) / 1000] as const)

describe('the steps of an axis', () => {
  it('are at most seven, round, and cover what is shown', () => {
    fc.assert(
      fc.property(spans, ([from, to]) => {
        const steps = roundSteps([from, to])
        expect(steps.count).toBeGreaterThan(2)
        expect(steps.count).toBeLessThanOrEqual(7)
        expect(steps.step.toExponential()).toMatch(/^[125](e|\.0)/)
        expect(steps.min).toBeLessThanOrEqual(from + 1e-6 * steps.step)
        expect(endOf(steps)).toBeGreaterThanOrEqual(to - 1e-6 * steps.step)
      }),
    )
  })

  it('are as many as those of the axis whose lines they share', () => {
    fc.assert(
      fc.property(spans, fc.integer({ min: 3, max: 7 }), ([from, to], count) => {
        const steps = roundSteps([from, to], count)
        expect(steps.count).toBe(count)
        expect(endOf(steps)).toBeGreaterThanOrEqual(to - 1e-6 * steps.step)
      }),
    )
    const [left, right] = vertical(chargeSample)
    expect(right?.count).toBe(left?.count)
  })

  it('put values between the ends', () => {
    const up = scale({ min: 3, step: 0.5, count: 4 }, [200, 100])
    expect([3, 4, 5].map(up)).toEqual([200, 150, 100])
  })

  it('are whole days where readings have dates, about a single one too', () => {
    const log = (...days: number[]) =>
      horizontal(
        logChart({
          pack: own('wren'),
          points: days.map(day => ({ at: new Date(Date.UTC(2026, 4, day, 15)), capacity_Ah: 0.7 })),
          locale,
        }),
      ).ticks.map(({ label }) => label)
    expect(log(1, 29)).toEqual(['2026-05-01', '2026-05-11', '2026-05-21', '2026-05-31'])
    expect(log(7)).toEqual(['2026-05-06', '2026-05-07', '2026-05-08', '2026-05-09'])
  })
})
