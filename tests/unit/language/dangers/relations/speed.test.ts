// Amps, rates and minutes that no pack bears. Common practice: 1C for every pack, up to 5C where its label says so; at
// 6C and beyond, which fills it in 10 minutes, the words alone are reason to refuse.

import { expect, test } from 'vitest'
import {
  isInFlight,
  isRatedFuse,
  isUsualRate,
  tooFast,
  tooSoon,
} from '../../../../../src/language/dangers/relations/speed.ts'
import { tells } from './tells.ts'
import { told } from './told.ts'

tells('amps for a capacity', tooFast, 'tooFast', [
  ['1000 mAh at 6 A'],
  ['1000 mAh at 6.1 A', '6.1 A'],
  ['500 mAh at 3.1 A', '3.1 A'],
  ['500 mAh at 3 A'],
  ['at 7 A'],
  ['1000 mAh at 7 V'],
  ['30 Ah at 199 A', '199 A'],
  ['30 Ah at 200 A'],
  // They are to be set, and not what something can give.
  ['1000 mAh, at uh uh 7 A', '7 A'],
  ['1000 mAh, at uh uh uh 7 A'],
  ['1000 mAh at 7 8 A'],
  ['1000 mAh at 8, 7 uh, at 9 A', '9 A'],
  ['1000 mAh at 7 A 12 V'],
  ['1000 mAh at 7 A uh 12 V'],
  ['1000 mAh at 7 A uh uh 12 V', '7 A'],
  ['1000 mAh, 12 V at 7 A'],
  ['1000 mAh, 12 V uh at 7 A', '7 A'],
  ['1000 mAh at 7 A psu'],
  ['1000 mAh, cable uh uh at 7 A'],
  ['1000 mAh, cable uh uh uh at 7 A', '7 A'],
  ['1000 mAh, max uh uh uh at 7 A'],
  ['1000 mAh, max uh uh uh uh at 7 A', '7 A'],
  ['board, 1000 mAh at 7 A'],
  ['two packs of 1000 mAh at 7 A'],
  ['my motor: 1000 mAh at 7 A'],
  ['1000 mAh at 7 A for flying'],
  ['1000 mAh, use 7 A but 1 C', '7 A'],
  ['charge 1000 mAh, use 7 A but 1 C'],
])

tells('rates', tooFast, 'tooFast', [
  ['charge it, 6 C', '6 C'],
  ['charge it, 5.9 C'],
  ['charge it, 200 C', '200 C'],
  ['charge it, 201 C'],
  ['charge it, 7 W'],
  ['charge uh uh uh 7 C', '7 C'],
  ['charge uh uh uh uh 7 C'],
  ['board, charge it, 7 C', '7 C'],
  ['charge it, 7 C, what does it mean'],
  ['charge it, 7 C, meaningful', '7 C'],
  ['charge it, 7 C, well meant', '7 C'],
  ['charge it, 7 C, demeaning', '7 C'],
  ['charge it, 7 C but 2 C'],
  ['charge it, 7 C but 2.1 C', '7 C'],
  ['charge it, 7 C but 1 A', '7 C'],
  ['charge it, 7 C and 2 C', '7 C'],
  ['2 C. Charge it, 7 C but yes', '7 C'],
])

tells('minutes until it is full', tooSoon, 'tooFast', [
  ['charge 1000 mAh in 10 minutes', '10 minutes'],
  ['charge 1000 mAh in 11 minutes'],
  ['charge 1000 mAh in 10 V'],
  ['charge 1000 mAh in about 10 minutes', '10 minutes'],
  ['charge 1000 mAh in uh about 10 minutes'],
  ['charge 1000 mAh within 10 minutes', '10 minutes'],
  ['charge 1000 mAh under 10 minutes', '10 minutes'],
  ['charge 1000 mAh begin 10 minutes'],
  ['charge 1000 mAh inside 10 minutes'],
  ['charge it in 10 minutes'],
  ['look at 1000 mAh in 10 minutes'],
  ['1000 mAh full in 10 minutes', '10 minutes'],
  ['full 1000 mAh uh uh uh uh uh in 10 minutes', '10 minutes'],
  ['full 1000 mAh uh uh uh uh uh uh in 10 minutes'],
  ['in 10 minutes I charge 1000 mAh'],
  ['charge 1000 mAh in 10 minutes, it says'],
  ['charge 1000 mAh in 10 minutes, she said', '10 minutes'],
])

test.each<readonly [string, boolean]>([
  ['5 C', true],
  ['5.1 C', false],
  ['3 C and 6 C', false],
  ['1000 mAh at 2 A', true],
  ['1000 mAh at 2.1 A', false],
  ['1000 mAh at 1 A and 3 A', false],
  ['3 C, 1000 mAh at 3 A', true],
  ['3 C, 1000 mAh at 3.1 A', false],
  ['2 A', false],
  ['1000 mAh', false],
])('%s: usual %s', (text, is) => expect(isUsualRate(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['a 10 A fuse', true],
  ['a 10 A fused lead', true],
  ['fuse 10 A', true],
  ['fuse of 10 A', false],
  ['a 10 V fuse', false],
  ['a 10 A fuselage', false],
  ['I refuse 10 A', false],
  ['a fuse', false],
  ['a 10 A fuse, replaced', false],
  ['a 10 A fuse, input side', true],
  ['10 A fuse, and 20 A', true],
])('%s: a fuse by its amps %s', (text, is) => expect(isRatedFuse(told(text))).toBe(is))

test.each<readonly [string, boolean]>([
  ['30 A', true],
  ['29 A', false],
  ['30 V', false],
  ['40 A, then 2 A', true],
  ['it flies', true],
  ['a butterfly', false],
  ['charge it, then it flies', false],
  ['I looked', false],
])('%s: in flight %s', (text, is) => expect(isInFlight(told(text))).toBe(is))
