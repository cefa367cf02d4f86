// One cell as a circuit: resistances by capacity, reading and temperature, and its answer to a current.

import { describe, expect, test } from 'vitest'
import { advance, cellOf, scaleResistance, terminalVoltage } from '../../../src/charging/simulation/cell.ts'
import { resistanceFactor } from '../../../src/charging/simulation/resistance.ts'
import { typicalResistance } from '../../../src/charging/things/cell-class.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'

const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 2 } as const
const cell = cellOf(pack, 25)
const wholeOf = ({ series_ohm, fast, slow }: typeof cell) => series_ohm + fast.resistance_ohm + slow.resistance_ohm

describe('resistance', () => {
  test('is that of a typical cell of the chemistry over the capacity', () => {
    const { atOnce_ohmAh, later_ohmAh } = typicalResistance(lipo.classes.value)
    expect(wholeOf(cell)).toBeCloseTo((atOnce_ohmAh + later_ohmAh) / 2, 9)
    expect(wholeOf(cellOf({ ...pack, capacity_Ah: 4 }, 25))).toBeCloseTo(wholeOf(cell) / 2, 9)
  })

  test('at once is a reading, whatever the temperature it was taken at; more comes later', () => {
    const read = { ...pack, cellResistance_ohm: 0.01 }
    for (const temperature_C of [25, 5]) {
      const { series_ohm, slow } = cellOf(read, temperature_C)
      expect(series_ohm).toBeCloseTo(0.01, 12)
      expect(slow.resistance_ohm).toBeGreaterThan(0.002)
    }
  })

  test('is less of a cell whose label prints a high discharge, and grows later on as capacity goes', () => {
    const [high, energy] = [{ ...pack, dischargeRate_C: 45 }, pack]
    expect(wholeOf(cellOf(high, 25))).toBeLessThan(wholeOf(cellOf(energy, 25)))
    const aged = cellOf(pack, 25, 1.5)
    expect(aged.series_ohm).toBe(cell.series_ohm)
    expect(aged.slow.resistance_ohm).toBeGreaterThan(1.5 * cell.slow.resistance_ohm)
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
    // 3.7925 V at 50 %, and 2 A through 10 mΩ
    expect(terminalVoltage({ ...cell, series_ohm: 0.01 }, rested)).toBeCloseTo(3.7925 + 0.02, 9)
  })

  test('a steady current charges a pair as one less e to the minus time over time constant', () => {
    const after = advance(cell, rested, cell.fast.timeConstant_s, 2)
    expect(after.fast_V).toBeCloseTo(2 * cell.fast.resistance_ohm * (1 - Math.exp(-1)), 12)
    expect(after.soc).toBeCloseTo(0.5 + (2 * cell.fast.timeConstant_s) / 3600 / 2, 12)
  })

  test('one ramp is the same as its two halves', () => {
    const whole = advance(cell, rested, 60, 1)
    const halves = advance(cell, advance(cell, rested, 30, 1.5), 30, 1)
    for (const key of ['time_s', 'soc', 'current_A', 'fast_V', 'slow_V'] as const)
      expect(halves[key]).toBeCloseTo(whole[key], 12)
  })
})
