// Degrees beside words of heat and cold. Cells are charged from 0 to 45 °C, with their usual current from 10 °C on.

import { expect, test } from 'vitest'
import { isMild, isWarm } from '../../../../../src/language/dangers/relations/warmth.ts'
import { told } from './told.ts'

const degrees: readonly (readonly [text: string, isMild: boolean, isWarm: boolean])[] = [
  ['it is warm', false, false],
  ['at 2 A it is warm', false, false],
  ['9 degrees in the shed', true, false],
  ['10 degrees in the shed', true, true],
  ['45 degrees in the car', true, true],
  ['46 degrees in the car', false, true],
  ['20 degrees, and at 50 A', true, true],
  ['20 degrees in and 50 degrees out', false, true],
  ['20 degrees in and 5 degrees out', true, false],
  ['40 degrees and too hot to hold', false, true],
  ['40 degrees and a photo of it', true, true],
  ['12 degrees, it was frozen', true, false],
  ['12 degrees with a slice of cake', true, true],
  ['outside 4 degrees, the pack is at 20 degrees', true, true],
  ['in from the cold car, 21 degrees in here', true, false],
]

test.each(degrees)('%s: mild %s, warm %s', (text, mild, warm) => {
  expect(isMild(told(text))).toBe(mild)
  expect(isWarm(told(text))).toBe(warm)
})
