// A simulated charge: its stages, what it never exceeds, and that its energy adds up.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { Charge, ChargeRequest } from '../../../src/charging/simulation/charge.ts'
import { simulateCharge } from '../../../src/charging/simulation/simulate.ts'
import { chemistries, lipo } from '../../../src/charging/things/chemistries.ts'
import { belowEmpty, integrateCurve } from '../../../src/charging/things/curve.ts'
import { cases } from '../../support/cases.ts'

const pack3S = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 2.2 } as const
const plain: ChargeRequest = {
  pack: pack3S,
  current_A: 2.2,
  from: { kind: 'soc', soc: 0.2 },
  target: { kind: 'voltage', perCell_V: 4.2 },
}

const number = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const maybe = <T>(arbitrary: fc.Arbitrary<T>) => fc.option(arbitrary, { nil: undefined })

/** Every request that the notation can carry, and some that it cannot. */
const anyRequest: fc.Arbitrary<ChargeRequest> = fc
  .record({
    chemistry: fc.constantFrom(...chemistries),
    series: fc.integer({ min: 1, max: 14 }),
    parallel: fc.integer({ min: 1, max: 8 }),
    capacity_Ah: number(0.02, 60),
    rate_C: number(0.01, 10),
    startSoc: maybe(number(0, 1)),
    start_V: number(1.5, 4.4),
    endSoc: maybe(number(0, 1)),
    below_V: number(-0.1, 0.7),
    terminationShare: maybe(number(1e-7, 1.2)),
    powerShare: maybe(number(0.02, 1.5)),
    temperature_C: maybe(number(-30, 80)),
    reading_ohmAh: maybe(number(1e-4, 1)),
  })
  .map(drawn => {
    const { chemistry, series, parallel, capacity_Ah, startSoc, endSoc, terminationShare, powerShare } = drawn
    const current_A = drawn.rate_C * capacity_Ah
    const perCell_V = chemistry.full_V.value - drawn.below_V
    return {
      pack: {
        chemistry,
        series,
        parallel,
        capacity_Ah,
        ...(drawn.reading_ohmAh !== undefined && { cellResistance_ohm: drawn.reading_ohmAh / capacity_Ah }),
      },
      current_A,
      from: startSoc === undefined ? { kind: 'rest', perCell_V: drawn.start_V } : { kind: 'soc', soc: startSoc },
      target:
        endSoc === undefined
          ? { kind: 'voltage', perCell_V }
          : { kind: 'soc', soc: endSoc, cutoffPerCell_V: perCell_V },
      ...(terminationShare !== undefined && { termination_A: terminationShare * current_A }),
      ...(powerShare !== undefined && { power_W: powerShare * current_A * perCell_V * series }),
      ...(drawn.temperature_C !== undefined && { temperature_C: drawn.temperature_C }),
    }
  })

const cutoffOf = ({ target }: ChargeRequest) => (target.kind === 'voltage' ? target.perCell_V : target.cutoffPerCell_V)

describe('for any request', () => {
  test('every number is finite, and no stage is empty or runs backwards', () => {
    fc.assert(
      fc.property(anyRequest, request => {
        const charge = simulateCharge(request)
        const { stages, curve, ...totals } = charge
        const numbers = [totals, ...stages, ...curve].flatMap(Object.values).filter(value => typeof value === 'number')
        expect(numbers.every(Number.isFinite)).toBe(true)
        expect(stages.every(stage => stage.duration_s > 0)).toBe(true)
        expect(curve.every((at, i) => at.time_s >= (curve[i - 1]?.time_s ?? 0))).toBe(true)
      }),
      cases(2_000),
    )
  })

  test('voltage never exceeds the cutoff, current what is set, power what is there', () => {
    fc.assert(
      fc.property(anyRequest, request => {
        const charge = simulateCharge(request)
        const cutoff_V = cutoffOf(request) + 1e-6
        const current_A = request.current_A * (1 + 1e-9)
        const power_W = (request.power_W ?? Number.POSITIVE_INFINITY) * (1 + 1e-6)
        const highest = highestOf(charge)
        expect(highest.perCell_V).toBeLessThanOrEqual(cutoff_V)
        expect(highest.current_A).toBeLessThanOrEqual(current_A)
        expect(charge.peakPower_W).toBeLessThanOrEqual(power_W)
      }),
      cases(10_000),
    )
  })

  test('energy in is energy stored and heat, to 0.1 %', () => {
    fc.assert(
      fc.property(anyRequest, request => {
        const { energy_Wh, heat_Wh, startSoc, endSoc, charge_Ah } = simulateCharge(request)
        const { series, capacity_Ah, chemistry } = request.pack
        const curve = belowEmpty(chemistry)
        const stored_Wh = series * capacity_Ah * integrateCurve(curve, startSoc, endSoc)
        expect(Math.abs(energy_Wh - stored_Wh - heat_Wh)).toBeLessThanOrEqual(0.001 * energy_Wh)
        expect(charge_Ah).toBeCloseTo((endSoc - startSoc) * capacity_Ah, 6)
        expect(heat_Wh).toBeGreaterThanOrEqual(0)
      }),
      cases(2_000),
    )
  })

  test('at constant power it is power times time, at constant voltage voltage times charge, to 0.1 %', () => {
    fc.assert(
      fc.property(anyRequest, request => {
        for (const { kind, duration_s, charge_Ah, energy_Wh } of simulateCharge(request).stages) {
          const held_Wh =
            kind === 'constant power'
              ? ((request.power_W as number) * duration_s) / 3600
              : cutoffOf(request) * request.pack.series * charge_Ah
          if (kind === 'constant power' || kind === 'constant voltage')
            expect(Math.abs(energy_Wh - held_Wh)).toBeLessThanOrEqual(0.001 * held_Wh)
        }
      }),
      cases(2_000),
    )
  })

  test('more current never takes longer to the cutoff, a fuller start never longer at all', () => {
    fc.assert(
      fc.property(anyRequest, number(1, 2), number(0, 1), (request, more, share) => {
        const before = simulateCharge(request)
        const faster = simulateCharge({ ...request, current_A: request.current_A * more })
        const reached = ({ stages }: Charge) => stages.at(-1)?.kind === 'constant voltage'
        if (reached(before)) expect(faster.timeToCutoff_s).toBeLessThanOrEqual(before.timeToCutoff_s * 1.0001)
        const start = Math.min(1, Math.max(0, before.startSoc))
        const fuller = simulateCharge({ ...request, from: { kind: 'soc', soc: start + share * (1 - start) } })
        expect(fuller.duration_s).toBeLessThanOrEqual(before.duration_s * 1.005 + 1)
      }),
      cases(2_000),
    )
  })
})

describe('the stages', () => {
  const kinds = (request: ChargeRequest) => simulateCharge(request).stages.map(stage => stage.kind)

  test('a plain charge is constant current, then constant voltage', () => {
    expect(kinds(plain)).toEqual(['constant current', 'constant voltage'])
  })

  test('a deeply drained cell starts with a tenth of the current', () => {
    const charge = simulateCharge({ ...plain, from: { kind: 'rest', perCell_V: 2.7 } })
    expect(charge.stages[0]?.kind).toBe('precharge')
    expect(charge.curve[0]?.current_A).toBeCloseTo(0.22, 9)
    expect(charge.startSoc).toBeLessThan(0)
  })

  test('a cell drained to its damage threshold lacks about a hundredth of its charge, which goes in slowly', () => {
    const charge = simulateCharge({ ...plain, from: { kind: 'rest', perCell_V: 2.51 } })
    expect(charge.startSoc).toBeGreaterThan(-0.0101)
    const [slow] = charge.stages
    expect(slow).toMatchObject({ kind: 'precharge' })
    // A hundredth of 2.2 Ah at 0.22 A is six minutes; the surface of the particles is there sooner.
    expect(slow?.duration_s).toBeGreaterThan(120)
    expect(slow?.duration_s).toBeLessThan(360)
  })

  test('a power limit puts constant power between them', () => {
    const charge = simulateCharge({ ...plain, power_W: 26 })
    expect(charge.stages.map(stage => stage.kind)).toEqual(['constant current', 'constant power', 'constant voltage'])
    expect(charge.peakPower_W).toBeCloseTo(26, 6)
    expect(charge.duration_s).toBeGreaterThan(simulateCharge(plain).duration_s)
  })

  test('ends at a tenth of the set current, or where it is told', () => {
    expect(simulateCharge(plain).curve.at(-1)?.current_A).toBeCloseTo(0.22, 6)
    expect(simulateCharge({ ...plain, termination_A: 0.5 }).curve.at(-1)?.current_A).toBeCloseTo(0.5, 6)
  })

  test('stops at a state of charge', () => {
    const target = { kind: 'soc', soc: 0.5, cutoffPerCell_V: 4.2 } as const
    const charge = simulateCharge({ ...plain, target })
    expect(charge.endSoc).toBeCloseTo(0.5, 9)
    // 0.3 of 2.2 Ah at 2.2 A
    expect(charge.duration_s).toBeCloseTo(0.3 * 3600, 3)
  })

  test('a pack above its target takes no charge', () => {
    const charge = simulateCharge({ ...plain, from: { kind: 'rest', perCell_V: 4.2 } })
    expect(charge).toMatchObject({ stages: [], duration_s: 0, charge_Ah: 0, energy_Wh: 0, peakPower_W: 0 })
  })
})

test('a parallel pair at twice the current charges like one cell, and takes twice the energy', () => {
  const one = simulateCharge({ ...plain, pack: { ...pack3S, series: 1 } })
  const pair = simulateCharge({
    ...plain,
    current_A: 4.4,
    pack: { ...pack3S, series: 1, parallel: 2, capacity_Ah: 4.4 },
  })
  expect(pair.duration_s).toBeCloseTo(one.duration_s, 6)
  expect(pair.energy_Wh).toBeCloseTo(2 * one.energy_Wh, 6)
})

test('a cold pack reaches its cutoff sooner and makes more heat', () => {
  const warm = simulateCharge(plain)
  const cold = simulateCharge({ ...plain, temperature_C: 0 })
  expect(cold.timeToCutoff_s).toBeLessThan(warm.timeToCutoff_s)
  expect(cold.heat_Wh).toBeGreaterThan(warm.heat_Wh)
})

test.each([
  ['current_A', { current_A: Number.NaN }],
  ['current_A', { current_A: -1 }],
  ['termination_A', { termination_A: 0 }],
  ['power_W', { power_W: Number.POSITIVE_INFINITY }],
  ['capacity_Ah', { pack: { ...pack3S, capacity_Ah: 0 } }],
  ['from.soc', { from: { kind: 'soc', soc: 1.2 } }],
  ['temperature_C', { temperature_C: Number.NaN }],
] as const)('a caller that gives no usable %s gets a RangeError that names it', (name, change) => {
  expect(() => simulateCharge({ ...plain, ...change })).toThrow(new RegExp(`^${name} must be`))
})

function highestOf({ curve }: Charge): { perCell_V: number; current_A: number } {
  return {
    perCell_V: curve.reduce((high, at) => Math.max(high, at.perCell_V), 0),
    current_A: curve.reduce((high, at) => Math.max(high, at.current_A), 0),
  }
}
