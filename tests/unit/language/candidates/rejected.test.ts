// What is only said not to hold is no value, where another of its kind holds.

import { expect, it } from 'vitest'
import { bestCover, candidatesOf } from '../../../../src/language/candidates/index.ts'

const told = (text: string) =>
  bestCover(candidatesOf(text)).flatMap(value => (value.text === '' ? [] : `${value.kind} ${value.text}`))

it.each([
  ['charge at 2 A, not 3 A', ['current 2A']],
  ['not 3 A but 2 A', ['current 2A']],
  ['if not at 2 A but at 1C', ['rate 1C']],
  ['a 4s not 3s 1500 lipo', ['pack 4S', 'pack 1500mAh LiPo']],
  ['a 4s instead of a 3s', ['pack 4S']],
  ['five packs and not six', ['count 5']],
  ['resting 12 V, not 24', ['voltage 12V']],
  ['at 3.8 V per cell, not 3.7', ['state 3.8V per cell']],
])('"%s" keeps what holds', (text, values) => {
  expect(told(text)).toEqual(values)
})

it.each([
  ['why not 3 A, it says 2 A', ['current 3A', 'current 2A']],
  ['at 2 A or not 3 A', ['current 2A', 'current 3A']],
  ['is it not 4s', ['pack 4S']],
  ['no more than 2 A, 3 A is not good', ['current 2A', 'current 3A']],
  ['at 2 A instead of 3 A', ['current 2A', 'current 3A']],
])('"%s" leaves both, or the only one', (text, values) => {
  expect(told(text)).toEqual(values)
})
