// Copper wire against published tables.

import { describe, expect, it } from 'vitest'
import { mostCurrent_A, wireDiameter_mm, wireResistance_ohm, wireRise_K } from '../../src/charging/leads/wire.ts'

// ASTM B258 (diameters, mm) with IEC 60028 copper (1.7241e-8 ohm·m at 20 °C); the resistances of gauges 10, 12,
// 14, 16, 18, 20, 22, 24 and 30 agree with printed tables of solid wire to 1 %.
const table: readonly (readonly [gauge: number, diameter_mm: number, ohmPerKm: number])[] = [
  [8, 3.2636, 2.061],
  [10, 2.5882, 3.277],
  [12, 2.0525, 5.211],
  [14, 1.6277, 8.285],
  [16, 1.2908, 13.174],
  [18, 1.0237, 20.948],
  [20, 0.8118, 33.308],
  [22, 0.6438, 52.962],
  [24, 0.5106, 84.213],
  [26, 0.4049, 133.904],
  [28, 0.3211, 212.916],
  [30, 0.2546, 338.55],
]

describe('copper wire (ASTM B258, IEC 60028)', () => {
  it.each(table)('AWG %i is %f mm thick and has %f ohm a kilometre at 20 °C', (gauge, diameter_mm, ohmPerKm) => {
    expect(wireDiameter_mm(gauge)).toBeCloseTo(diameter_mm, 3)
    expect(wireResistance_ohm(gauge, 1000) / ohmPerKm).toBeCloseTo(1, 3)
  })

  // ASTM B258: 36 is 0.0050 in and 0000 (here -3) is 0.4600 in, by definition of the series.
  it('has the ends that define the series', () => {
    expect(wireDiameter_mm(36)).toBeCloseTo(0.005 * 25.4, 9)
    expect(wireDiameter_mm(-3)).toBeCloseTo(0.46 * 25.4, 6)
  })

  // IEC 60028: 0.00393 a kelvin at 20 °C, so 11.79 % more at 50 °C.
  it('grows with temperature as annealed copper does', () => {
    expect(wireResistance_ohm(16, 1, 50) / wireResistance_ohm(16, 1, 20)).toBeCloseTo(1.1179, 6)
  })
})

// NEC (NFPA 70) table 310.17, single insulated copper conductors in free air of 30 °C, the column for 60 °C: a rise of
// 30 K with 0.8 to 1.1 mm of insulation, as our own limit has it.
const freeAir: readonly (readonly [gauge: number, current_A: number])[] = [
  [14, 25],
  [12, 30],
  [10, 40],
  [8, 60],
  [6, 80],
  [4, 105],
]

describe('the warming of a lead in still air', () => {
  it.each(freeAir)('lets AWG %i carry about the %i A of NEC table 310.17', (gauge, current_A) => {
    expect(mostCurrent_A(gauge, 30) / current_A).toBeGreaterThan(0.9)
    expect(mostCurrent_A(gauge, 30) / current_A).toBeLessThan(1.15)
  })

  // FAA AC 43.13-1B figure 11-4a, single copper wire in free air: AWG 14 from 50 to 200 °C at 47 A, AWG 20 from 60 to
  // 200 °C at 21.5 A. Aircraft wire has about 0.25 mm of insulation.
  it.each([
    [14, 47, 50, 150],
    [20, 21.5, 60, 140],
  ])('warms aircraft wire of AWG %i at %f A in air of %i °C by about %i K', (gauge, current_A, air_C, rise_K) => {
    expect(wireRise_K(gauge, current_A, air_C, 0.25) / rise_K).toBeGreaterThan(0.85)
    expect(wireRise_K(gauge, current_A, air_C, 0.25) / rise_K).toBeLessThan(1.15)
  })
})
