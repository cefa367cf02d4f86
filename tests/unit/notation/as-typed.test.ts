// The signs that phones, word processors and other keyboards put between what people mean.

import { describe, expect, it } from 'vitest'
import { readDuration } from '../../../src/language/quantities/duration.ts'
import * as quantities from '../../../src/language/quantities/quantities.ts'
import { readCharger } from '../../../src/language/things/charger.ts'
import { readPack } from '../../../src/language/things/pack.ts'

describe('a value as typed', () => {
  it.each([
    ['3S\u00a02200\u202fmAh\u2009LiPo', 2.2],
    ['\uff13\uff33 \uff12\uff12\uff10\uff10\uff4d\uff21\uff48 LiPo', 2.2],
    ['3s 2200 MAH LIPO', 2.2],
    ['3S 2,2 Ah LiPo', 2.2],
    ['3S 2.2 A\u00b7h lipo', 2.2],
    ['3S\u20132200 mah li\u2011po', 2.2],
    ['lithium polymer 3S 2200 mAh', 2.2],
    ['3S 2200 mAh LiPos', 2.2],
  ])('is the pack that %j says', (text, capacity_Ah) => {
    expect(readPack(text).value).toMatchObject({ series: 3, capacity_Ah, chemistry: { name: 'LiPo' } })
  })

  it.each([
    [quantities.readCurrent, '2,2\u202fA', 2.2],
    [quantities.readCurrent, '\uff12\uff0e\uff12\uff21', 2.2],
    [quantities.readCurrent, '2.2 Amperes', 2.2],
    [quantities.readResistance, '8 MOHM', 0.008],
    [quantities.readResistance, '8 m\u2126', 0.008],
    [quantities.readPower, '80 Watt', 80],
    [quantities.readTemperature, '\u22125 \u2103', -5],
    [quantities.readTemperature, '28 \u00b0F', -2.2],
    [quantities.readGauge, '16 gauge', 16],
    [readDuration, '1 Hr 20 Mins', 4800],
    [readDuration, '2 hrs', 7200],
    [readDuration, '2 days', 172_800],
  ] as const)('%o reads %j', (read, text, value) => {
    expect(read(text)).toBeCloseTo(value, 9)
  })

  it('is a range with any dash', () => {
    const plain = readCharger('0.1-10A by 0.1 9-20V')
    expect(readCharger('0,1\u201310A by 0,1 9\u201220V')).toEqual(plain)
  })
})
