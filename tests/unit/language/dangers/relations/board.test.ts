// Packs that share a board: common practice is that their cells lie no further apart than 0.1 V, and that they are of
// one kind.

import { expect, test } from 'vitest'
import { dangersIn } from '../../../../../src/language/dangers/index.ts'
import { isOneKind } from '../../../../../src/language/dangers/relations/one-kind.ts'
import { boardMixed, healthyVolts, isAlike } from '../../../../../src/language/dangers/relations/volts.ts'
import { tells } from './tells.ts'
import { told } from './told.ts'

tells('how far they are told to lie apart', boardMixed, 'boardMixed', [
  ['board, 0.11 V apart', '0.11 V'],
  ['board, 0.1 V apart'],
  ['board, 0.11 apart', '0.11'],
  ['board, 1.00 apart', '1.00'],
  ['board, 1 apart'],
  ['board, 0.11 A apart'],
  ['board, 2 V apart'],
  ['0.11 V apart'],
  ['board, 0.11 V apart, one stays off'],
  ['board, the 3S differ by 0.33 V in total', '0.33 V'],
  ['board, the 3S differ by 0.3 V in total'],
  ['board, the 3S differ by 0.3 V', '0.3 V'],
  ['board, they differ by 0.11 V in total', '0.11 V'],
])

tells('how far their volts lie apart', boardMixed, 'boardMixed', [
  ['board, 3.8 V, 3.9 V', '3.8 V, 3.9 V'],
  ['board, 3.9 V, 3.8 V', '3.9 V, 3.8 V'],
  ['board, 3.8 V, 3.89 V'],
  ['board, 3.8, 3.9', '3.8, 3.9'],
  ['board, 4.00, 3.9', '4.00, 3.9'],
  ['board, 4, 3.9'],
  ['board, 3.8 A, 3.9 A'],
  ['board, 3.8 V'],
  ['board, 3.85, 3.8, 3.9', '3.8, 3.9'],
  ['board, 2.9, 3.1', '2.9, 3.1'],
  ['board, 2.89, 3.1'],
  ['board, 4.2, 4.36', '4.2, 4.36'],
  ['board, 4.2, 4.37'],
  ['board, 3.8, end 3.9'],
  ['board, 3.8, trend 3.9', '3.8, trend 3.9'],
  ['board, 3.8, topside 3.9', '3.8, topside 3.9'],
  // Of whole packs.
  ['board, 3S 11.1 V, 11.4 V', '11.1 V, 11.4 V'],
  ['board, 3S 11.1 V, 11.38 V'],
  ['board, 3S 9 V, 11.1 V', '9 V, 11.1 V'],
  ['board, 3S 8.99 V, 11.1 V'],
  ['board, 3S 12.6 V, 13.07 V', '12.6 V, 13.07 V'],
  ['board, 3S 12.6 V, 13.09 V'],
  ['board, 3S 11.1, 11.4', '11.1, 11.4'],
  ['board, 1S 11.1, 11.4'],
  // And of packs without a count.
  ['board, 11.1 V, 11.4 V', '11.1 V, 11.4 V'],
  ['board, 11.1 V, 11.38 V'],
  ['board, 11.1, 11.4'],
  ['board, 6 V, 7.4 V'],
  ['board, 6.1 V, 7.4 V', '6.1 V, 7.4 V'],
])

tells('how full they are, and of what kind', boardMixed, 'boardMixed', [
  ['board, one 50 %, other 62 %', '50 %, other 62 %'],
  ['board, one 62 %, other 50 %', '62 %, other 50 %'],
  ['board, one 50 %, other 61 %'],
  ['board, 50 %, 62 %'],
  ['board, one 50 %'],
  ['board, one 50 W, other 62 W'],
  ['3S beside a 4S on the board', '3S beside a 4S'],
  ['3S beside a 3S on the board'],
  ['3S beside a 3S and a 4S on the board', '3S beside a 3S and a 4S'],
  ['board 3S, 4S'],
  ['lipo beside a lihv on the board', 'lipo beside a lihv'],
  ['lipo beside a lipo on the board'],
  ['3S or a 4S together on the board'],
  ['3S vs 4S together on the board'],
  ['3S versus 4S together on the board'],
  ['or 3S and 4S together on the board', '3S and 4S'],
  ['3S beside a 4S'],
])

test.each<readonly [string, boolean]>([
  ['board, 3.8 V and 3.8 V', true],
  ['board, 3.8 and 3.85', true],
  ['board, 4.00 and 4.00', true],
  ['board, 4 and 4', false],
  ['board, 3.8 A and 3.8 A', false],
  ['board, 3.8 V', false],
  ['3.8 V and 3.8 V', false],
  ['board, 3.8 V and 3.9 V', false],
  ['board, 3S and 3S', true],
  ['board, 3S', false],
  ['board, a full 3S and 3S', false],
  ['board, 3S and a carefull 3S', true],
  ['board, 3S beside a 4S', false],
])('%s: alike %s', (text, is) => expect(isAlike(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['3.24 V', false],
  ['3.25 V', true],
  ['4.2 V', true],
  ['4.21 V', false],
  ['3.8', true],
  ['4.00', true],
  ['4', false],
  ['4 V', false],
  ['3.8 A', false],
  ['3S 11.4 V', true],
  ['3S 9.7 V', false],
  ['3S 12.6', true],
  ['3S 12.7', false],
  ['11.4 V', false],
  ['2.5 V and 3.8 V', true],
])('%s: sound volts %s', (text, is) => expect(healthyVolts(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['and a pair of those on the board?', true],
  ['two 4S 1500 lipo in parallel, how long', true],
  ['can i put four 3S 850 on one board', true],
  ['a pair on the board, one is full', false],
  ['two lipo and a lihv on the board', false],
  ['two lipo 3S 4S on the board', false],
  ['six packs on the board, a couple came from storage', false],
  ['three on the board at 40 %', false],
])('%s: so many of one kind %s', (text, is) => {
  expect(isOneKind(told(text))).toBe(is)
  const { told: sure, suspected } = dangersIn(text)
  if (is) expect([...sure.map(({ danger }) => danger), ...suspected]).not.toContain('boardMixed')
})
