import fc from 'fast-check'
import { expect, test } from 'vitest'
import { crossing } from '../../../src/charging/numbers/crossing.ts'

test('a rising function is not below zero where it crosses, and is just before it', () => {
  const at = fc.double({ min: 0.001, max: 0.999, noNaN: true })
  const bend = fc.double({ min: -3, max: 3, noNaN: true })
  fc.assert(
    fc.property(at, bend, (zero, bend) => {
      const of = (value: number) => (value - zero) * Math.exp(bend * value) * (value > zero ? 1 : 20)
      const found = crossing(0, 1, 1e-9, of)
      expect(of(found)).toBeGreaterThanOrEqual(0)
      expect(of(found - 1e-9)).toBeLessThan(0)
    }),
  )
})

test('it takes far fewer looks than halving', () => {
  let looks = 0
  crossing(0, 1, 1e-9, value => {
    looks += 1
    return Math.expm1(2 * value) - 1
  })
  expect(looks).toBeLessThan(14)
})
