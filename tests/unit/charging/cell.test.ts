// One cell as a circuit: resistances by capacity, reading and temperature, and its answer to a current.

import { describe, expect, test } from 'vitest'
import {
  advance,
  cellOf,
  resistanceFactor,
  scaleResistance,
  terminalVoltage,
} from '../../../src/charging/simulation/cell.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'

const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 2 } as const
const cell = cellOf(pack, 25)
const wholeOf = ({ series_ohm, fast, slow }: typeof cell) => series_ohm + fast.resistance_ohm + slow.resistance_ohm

describe('resistance', () => {
  test('is that of the chemistry over the capacity', () => {
    expect(wholeOf(cell)).toBeCloseTo(0.05 / 2, 9)
    expect(wholeOf(cellOf({ ...pack, capacity_Ah: 4 }, 25))).toBeCloseTo(0.05 / 4, 9)
  })

  test('follows a reading, whatever the temperature it was taken at', () => {
    const read = { ...pack, cellResistance_ohm: 0.01 }
    expect(wholeOf(cellOf(read, 25))).toBeCloseTo(0.0205, 9)
    expect(wholeOf(cellOf(read, 5))).toBeCloseTo(0.0205, 9)
  })

  test('grows in the cold without a bound in the middle and with one at the ends', () => {
    expect(resistanceFactor(10)).toBeGreaterThan(resistanceFactor(20))
    expect(resistanceFactor(-60)).toBe(resistanceFactor(-20))
    expect(resistanceFactor(90)).toBe(resistanceFactor(60))
    expect(wholeOf(cellOf(pack, 0))).toBeCloseTo(wholeOf(cell) * resistanceFactor(0), 9)
  })

  test('scales as a whole', () => {
    expect(wholeOf(scaleResistance(cell, 1.5))).toBeCloseTo(1.5 * wholeOf(cell), 12)
  })
})

describe('answer to a current', () => {
  const rested = { time_s: 0, soc: 0.5, current_A: 2, fast_V: 0, slow_V: 0 }

  test('at once the drop over the series resistance, by hand', () => {
    // 3.7925 V at 50 %, and 2 A through 0.4 * 0.025 ohm
    expect(terminalVoltage(cell, rested)).toBeCloseTo(3.7925 + 0.02, 9)
  })

  test('a steady current charges a pair as one less e to the minus time over time constant', () => {
    const after = advance(cell, rested, 40, 2)
    expect(after.fast_V).toBeCloseTo(2 * cell.fast.resistance_ohm * (1 - Math.exp(-1)), 12)
    expect(after.soc).toBeCloseTo(0.5 + (2 * 40) / 3600 / 2, 12)
  })

  test('one ramp is the same as its two halves', () => {
    const whole = advance(cell, rested, 60, 1)
    const halves = advance(cell, advance(cell, rested, 30, 1.5), 30, 1)
    for (const key of ['time_s', 'soc', 'current_A', 'fast_V', 'slow_V'] as const)
      expect(halves[key]).toBeCloseTo(whole[key], 12)
  })
})
