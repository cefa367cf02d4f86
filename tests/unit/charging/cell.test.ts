// One cell: resistance and diffusion by capacity, reading and temperature, and its answer to a current.

import { describe, expect, test } from 'vitest'
import {
  advance,
  cellOf,
  restedAt,
  scaleResistance,
  surfaceSoc,
  terminalVoltage,
} from '../../../src/charging/simulation/cell.ts'
import { resistanceFactor } from '../../../src/charging/simulation/resistance.ts'
import { typicalResistance } from '../../../src/charging/things/cell-class.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'

const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 2 } as const
const cell = cellOf(pack, 25)

describe('resistance', () => {
  test('is that of a typical cell of the chemistry over the capacity', () => {
    const { atOnce_ohmAh, diffusion_h } = typicalResistance(lipo.classes.value)
    expect(cell.series_ohm).toBeCloseTo(atOnce_ohmAh / 2, 9)
    expect(cell.diffusion_s).toBeCloseTo(diffusion_h * 3600, 9)
    const larger = cellOf({ ...pack, capacity_Ah: 4 }, 25)
    expect(larger.series_ohm).toBeCloseTo(cell.series_ohm / 2, 9)
    expect(larger.diffusion_s).toBeCloseTo(cell.diffusion_s, 9)
  })

  test('at once is a reading, whatever the temperature it was taken at; more comes later', () => {
    const read = { ...pack, cellResistance_ohm: 0.01 }
    for (const temperature_C of [25, 5]) {
      const { series_ohm, diffusion_s } = cellOf(read, temperature_C)
      expect(series_ohm).toBeCloseTo(0.01, 12)
      expect(diffusion_s).toBeGreaterThan(60)
    }
  })

  test('far above its kind is believed by half, as contacts are read too', () => {
    const far = cellOf({ ...pack, cellResistance_ohm: 0.2 }, 25).series_ohm
    expect(far).toBeLessThan(0.15)
    expect(far).toBeGreaterThan(0.05)
  })

  test('is less of a cell whose label prints a high discharge, and grows later on as capacity goes', () => {
    const [high, energy] = [{ ...pack, dischargeRate_C: 45 }, pack]
    expect(cellOf(high, 25).series_ohm).toBeLessThan(cellOf(energy, 25).series_ohm)
    const aged = cellOf(pack, 25, 1.5)
    expect(aged.series_ohm).toBe(cell.series_ohm)
    expect(aged.diffusion_s).toBeGreaterThan(1.5 * cell.diffusion_s)
  })

  test('grows in the cold without a bound in the middle and with one at the ends', () => {
    expect(resistanceFactor(10)).toBeGreaterThan(resistanceFactor(20))
    expect(resistanceFactor(-60)).toBe(resistanceFactor(-20))
    expect(resistanceFactor(90)).toBe(resistanceFactor(60))
    const cold = cellOf(pack, 0)
    expect(cold.series_ohm).toBeCloseTo(cell.series_ohm * resistanceFactor(0), 9)
    expect(cold.diffusion_s).toBeCloseTo(cell.diffusion_s * resistanceFactor(0), 9)
  })

  test('scales as a whole', () => {
    const { series_ohm, diffusion_s } = scaleResistance(cell, 1.5)
    expect([series_ohm, diffusion_s]).toEqual([1.5 * cell.series_ohm, 1.5 * cell.diffusion_s])
  })
})

describe('answer to a current', () => {
  const rested = { ...restedAt(0.5), current_A: 2 }

  test('at once the drop over the series resistance, by hand', () => {
    // 3.7925 V at 50 %, and 2 A through 10 mΩ
    expect(terminalVoltage({ ...cell, series_ohm: 0.01 }, rested)).toBeCloseTo(3.7925 + 0.02, 9)
  })

  test('a steady current brings the surface ahead by its time of diffusion, the charge by its time', () => {
    const after = advance(cell, rested, 3600, 1)
    expect(after.soc).toBeCloseTo(0.5 + 1.5 / 2, 12)
    const steady = advance(cell, { ...rested, current_A: 1 }, 1e5, 1)
    expect(surfaceSoc(steady) - steady.soc).toBeCloseTo(cell.diffusion_s / 3600 / 2, 9)
  })

  test('one ramp is the same as its two halves', () => {
    const whole = advance(cell, rested, 60, 1)
    const halves = advance(cell, advance(cell, rested, 30, 1.5), 30, 1)
    for (const key of ['time_s', 'soc', 'current_A', 'fast_soc', 'slow_soc'] as const)
      expect(halves[key]).toBeCloseTo(whole[key], 12)
  })
})
