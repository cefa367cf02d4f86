// Copper wire against published tables.

import { describe, expect, it } from 'vitest'
import { wireArea_mm2, wireDiameter_mm, wireResistance_ohm, wireRise_K } from '../../src/charging/leads/wire.ts'

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

// IEC 60364-5-52, method B2 (multi-core in conduit on a wall), PVC 70 °C, three loaded copper conductors, air at
// 30 °C, as reproduced in an instruction manual for industrial machines. Our rule is another (free air, 30 K of
// rise, thinner insulation), so that only the size of the current can agree.
const fixedWiring: readonly (readonly [area_mm2: number, current_A: number])[] = [
  [4, 27],
  [6, 34],
  [10, 46],
]

describe('the warming of a lead (IEC 60364-5-52, method B2)', () => {
  it.each(fixedWiring)('lets %i mm² carry about the %i A of fixed wiring', (area_mm2, current_A) => {
    const gauge = 36 - (39 * Math.log(Math.sqrt((4 * area_mm2) / Math.PI) / 0.127)) / Math.log(92)
    expect(wireArea_mm2(gauge)).toBeCloseTo(area_mm2, 6)
    let ours_A = 0
    while (wireRise_K(gauge, ours_A + 0.1, 30) <= 30) ours_A += 0.1
    expect(ours_A / current_A).toBeGreaterThan(0.85)
    expect(ours_A / current_A).toBeLessThan(1.15)
  })
})
