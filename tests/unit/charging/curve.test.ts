// The open-circuit curve read both ways, and the energy under it.

import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { chemistries, lipo } from '../../../src/charging/things/chemistries.ts'
import { integrateCurve, restingVoltage, socAt } from '../../../src/charging/things/curve.ts'

const soc = fc.double({ min: 0, max: 1, noNaN: true })

describe.each(Object.values(chemistries))('$name', chemistry => {
  const curve = chemistry.curve.value

  test('starts at 0, ends at 1, and rises all the way', () => {
    expect(curve.soc.at(0)).toBe(0)
    expect(curve.soc.at(-1)).toBe(1)
    for (let i = 1; i < curve.soc.length; i++) {
      expect(curve.soc[i]).toBeGreaterThan(curve.soc[i - 1] as number)
      expect(curve.perCell_V[i]).toBeGreaterThan(curve.perCell_V[i - 1] as number)
    }
  })

  test('is full at the full voltage, and empty above the damage threshold', () => {
    expect(restingVoltage(chemistry, 1)).toBe(chemistry.full_V.value)
    expect(restingVoltage(chemistry, 0)).toBeGreaterThan(chemistry.damage_V.value)
  })

  test('reading it one way and back gives the same state of charge', () => {
    fc.assert(
      fc.property(soc, at => {
        expect(socAt(chemistry, restingVoltage(chemistry, at))).toBeCloseTo(at, 9)
      }),
    )
  })

  test('more charge never rests lower', () => {
    fc.assert(
      fc.property(soc, soc, (a, b) => {
        const [less, more] = a < b ? [a, b] : [b, a]
        expect(restingVoltage(chemistry, less)).toBeLessThanOrEqual(restingVoltage(chemistry, more))
      }),
    )
  })

  test('the energy of two parts is that of the whole', () => {
    fc.assert(
      fc.property(soc, soc, soc, (...cuts) => {
        const [a, b, c] = cuts.sort((x, y) => x - y) as [number, number, number]
        const whole = integrateCurve(curve, a, c)
        expect(integrateCurve(curve, a, b) + integrateCurve(curve, b, c)).toBeCloseTo(whole, 9)
      }),
    )
  })
})

test('below the curve is empty, above it full', () => {
  expect(socAt(lipo, 2.1)).toBe(0)
  expect(socAt(lipo, 4.3)).toBe(1)
})

test('the energy between two corners is the mean voltage, by hand', () => {
  // LiPo from 50 % (3.7925 V) to 55 % (3.8122 V): 0.05 * 3.80235 V
  expect(integrateCurve(lipo.curve.value, 0.5, 0.55)).toBeCloseTo(0.05 * 3.80235, 9)
})

test('a number that is none is the mistake of the caller', () => {
  expect(() => socAt(lipo, Number.NaN)).toThrow(RangeError)
  expect(() => restingVoltage(lipo, Number.POSITIVE_INFINITY)).toThrow(RangeError)
})
