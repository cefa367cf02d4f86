// More put in than the label says, or more volts than cells take. Full is 4.20 V a cell by every LiPo's datasheet, a
// meter may be 15 mV off, and LiHV ends at 4.35 V; what is put in again is a few per cent more than the label says.

import { expect, test } from 'vitest'
import { isWithinLabel, overfull, tooHigh } from '../../../../../src/language/dangers/relations/speed.ts'
import { tells } from './tells.ts'
import { told } from './told.ts'

tells('what was put in', overfull, 'overfull', [
  ['1000 mAh, put 1250'],
  ['1000 mAh, put 1251', '1251'],
  ['1000 mAh, put 1251 mAh', '1251 mAh'],
  ['1000 mAh, put 2999', '2999'],
  ['1000 mAh, put 3000'],
  ['1000 mAh, put 1071'],
  ['1000 mAh, put 1071 and it continues', '1071'],
  ['1000 mAh, put 1070 and it continues'],
  ['put uh uh 1251, 1000 mAh', '1251'],
  ['put uh uh uh 1251, 1000 mAh'],
  ['1251 gone in, 1000 mAh', '1251'],
  ['1251, 1000 mAh'],
  ['1000 lipo, put 1251', '1251'],
  ['2000 lipo, 1000 mAh, put 1251', '1251'],
  ['100 mAh, put 126', '126'],
  ['99 mAh, put 126'],
  ['1000 V, put 1251'],
  ['1000 mAh, put 1251 V'],
  ['both 1000 mAh, put 1251'],
  // What stands behind the count is the label.
  ['in 4S 1251 went 1000 mAh'],
])

test.each<readonly [string, boolean]>([
  ['1000 mAh, put 1000', true],
  ['1000 mAh, put 1001', false],
  ['1000 mAh', false],
])('%s: within the label %s', (text, is) => expect(isWithinLabel(told(text))).toBe(is))

tells('volts of a cell', tooHigh, 'overfull', [
  ['4.22 per cell', '4.22'],
  ['4.21 per cell'],
  ['4.33 per cell', '4.33'],
  ['4.4 per cell'],
  ['4.41 per cell', '4.41'],
  ['7.9 V per cell', '7.9 V'],
  ['8 V per cell'],
  ['4.34 per cell'],
  ['4.22 A per cell'],
  ['4.22'],
  ['4.22 V with more punch', '4.22 V'],
  ['reads uh uh 4.22', '4.22'],
  ['reads uh uh uh 4.22'],
  ['above 4.2', '4.2'],
  ['above 4.19'],
  ['above 4.33', '4.33'],
  ['above 4.34'],
  ['above uh 4.2'],
  ['above 4.2 A'],
  ['4.22 per cell by my meter'],
  ['lihv 4.22 per cell'],
])

tells('volts of a pack', tooHigh, 'overfull', [
  ['3S reads 12.68 V', '12.68 V'],
  ['3S reads 12.68', '12.68'],
  ['3S reads 12.67 V'],
  ['3S reads 13.79 V', '13.79 V'],
  ['3S reads 13.81 V'],
  ['3S reads 13 V'],
  ['2S reads 9.00', '9.00'],
  ['2S reads 9'],
  ['1S reads 4.5 V'],
  ['2S reads 9.00 A'],
  ['it reads 12.68 V'],
  ['3S reads uh uh uh 12.68 V', '12.68 V'],
  ['3S reads uh uh uh uh 12.68 V'],
  ['3S, 12.68 V'],
  ['3S agm reads 12.68 V'],
  ['psu 3S uh uh uh uh reads 12.68 V'],
  ['psu 3S uh uh uh uh uh reads 12.68 V', '12.68 V'],
])
