// What is told of a label, of round cells and of a time that nobody knows disproves a danger.

import { expect, test } from 'vitest'
import { isLabelled, isRoundCell, isTimeUnknown } from '../../../../../src/language/dangers/relations/label.ts'
import { told } from './told.ts'

test.each<readonly [string, boolean]>([
  ['3S 850 lipo', true],
  ['3S 850', false],
  ['850 lipo', false],
  ['3S lipo', false],
  ['3S 850 lipo that I found', false],
  ['3S 850 lipo, unknown age', false],
  ['3S 850 lipo, unfound', true],
])('%s: a label is told: %s', (text, is) => expect(isLabelled(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['round liion', true],
  ['liion cells are round', true],
  ['liion that is round', true],
  ['liion round', false],
  ['round cells', true],
  ['a round cell', true],
  ['the round ones', true],
  ['the round one', true],
  ['round cellar', false],
  ['round fuelcells', false],
  ['round', false],
  ['round 3S', false],
  ['flat cells', false],
  ['round cells, and swollen', false],
])('%s: round by make: %s', (text, is) => expect(isRoundCell(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['no idea since when', true],
  ['until when', true],
  ['when, since I came', false],
  ['since', false],
  ['sincere when asked', false],
  ['nobody when asked', false],
])('%s: a time is unknown: %s', (text, is) => expect(isTimeUnknown(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['3S 1300 lipo', true],
  ['3S 1300 lipo, no idea how long that takes', true],
  ['3S 1300 lipo, no clue how many mah it has', false],
  ["3S 1300, I don't know if lipo or lihv", false],
  ['not sure of the type, 3S 1300 lipo', false],
])('%s: labelled %s', (text, is) => expect(isLabelled(told(text))).toBe(is))
