import { expect, test } from 'vitest'
import { createSeldom } from '../../../src/ground/seldom.ts'

test('each key is news once, and again when its time is over', () => {
  let now = 0
  const isNews = createSeldom(1000, () => now)
  expect([isNews('a'), isNews('a'), isNews('b')]).toEqual([true, false, true])
  now = 999
  expect(isNews('a')).toBe(false)
  now = 1000
  expect([isNews('a'), isNews('a')]).toEqual([true, false])
})
