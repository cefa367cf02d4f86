// Curves, charge fractions, temperature rules and thresholds of the chemistries against published values.

import { describe, expect, test } from 'vitest'
import { resistanceFactor } from '../../src/charging/simulation/resistance.ts'
import { socBandAt } from '../../src/charging/things/charge-fraction.ts'
import { chemistries, liFe, lihv, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import type { Chemistry, Cited, VoltageCurve } from '../../src/charging/things/chemistry.ts'
import { restingVoltage, socAt } from '../../src/charging/things/curve.ts'
import * as published from '../../src/charging/things/published-curves.ts'

/**
 * Li(Ni,Co)O2/graphite power pouch: Ecker et al., J. Electrochem. Soc. 162 (2015) A1836, doi:10.1149/2.0551509jes;
 * fits of Richardson et al., Electrochim. Acta 339 (2020) 135862.
 */
const ncoPowerPouch: Cited<VoltageCurve> = {
  value: {
    soc: published.lcoPouch.value.soc,
    perCell_V: [
      2.5, 3.2938, 3.4586, 3.5277, 3.587, 3.6565, 3.7094, 3.743, 3.77, 3.7805, 3.7873, 3.7979, 3.8155, 3.8417, 3.8823,
      3.94, 3.9868, 4.0304, 4.0789, 4.1353, 4.2,
    ],
  },
  standing: 'published',
  source: 'Ecker et al. 2015',
}

/** Largest distance in V between our curve and a table from `from` (state of charge) up. */
function farthest(chemistry: Chemistry, { value }: Cited<VoltageCurve>, from: number): number {
  const distances = value.soc.map((soc, i) =>
    soc < from ? 0 : Math.abs(restingVoltage(chemistry, soc) - (value.perCell_V[i] as number)),
  )
  return Math.max(...distances)
}

describe('curves at the points of the published tables', () => {
  // The empty end is left out where a chemistry's own empty voltage differs from the table's on purpose.
  test.each([
    // Used as it stands.
    ['LiPo, LiCoO2 pouch (Ai et al. 2020)', lipo, published.lcoPouch, 0, 0.0001],
    // Not used in the model: another maker's cathode.
    ['LiPo, Li(Ni,Co)O2 power pouch (Ecker et al. 2015)', lipo, ncoPowerPouch, 0.2, 0.11],
    // The source of the LiHV curve, which goes on to 4.35 V.
    ['LiHV, high-voltage pouch (SINTEF)', lihv, published.highVoltagePouch, 0, 0.016],
    // Not used in the model: mean of four vendor tables.
    ['LiHV, four phone cells', lihv, published.highVoltagePhoneCells, 0, 0.035],
    ['LiFe, measured 18650 (Sunil et al. 2025)', liFe, published.liFeCells[0], 0.05, 0.033],
    ['LiFe, computed 18650 (BPX examples)', liFe, published.liFeCells[1], 0.05, 0.051],
  ] as [string, Chemistry, Cited<VoltageCurve>, number, number][])('%s', (_, chemistry, table, from, tolerance_V) => {
    expect(farthest(chemistry, table, from)).toBeLessThanOrEqual(tolerance_V)
  })

  test('Li-ion lies among its five cells from 5 % up', () => {
    for (let soc = 0.05; soc <= 1; soc += 0.05) {
      const volts = published.liIonCells.map(({ value }) => value.perCell_V[Math.round(soc * 20)] as number)
      const own = restingVoltage(liIon, Math.round(soc * 20) / 20)
      expect(own).toBeGreaterThanOrEqual(Math.min(...volts) - 1e-9)
      expect(own).toBeLessThanOrEqual(Math.max(...volts) + 1e-9)
    }
  })
})

describe('charge by resting voltage', () => {
  // Lowest and highest of twelve published 4.20 V cells; the source stands beside the table.
  const { perCell_V, least, most } = published.chargeOf4V20Cells.value
  // Percent that a straight line between points 5 % apart may cost against the finer curves of the table.
  const betweenPoints = 0.2
  const rows = perCell_V.map((volts, i) => [volts, least[i] as number, most[i] as number] as const)

  test.each(rows)('at %f V LiPo and Li-ion hold between %f and %f percent', (volts, low, high) => {
    for (const chemistry of [lipo, liIon]) {
      expect(100 * socAt(chemistry, volts)).toBeGreaterThanOrEqual(low - betweenPoints)
      expect(100 * socAt(chemistry, volts)).toBeLessThanOrEqual(high + betweenPoints)
    }
  })

  test('at 4.10 V about nine tenths', () => {
    // "85 to 90 %", Battery University BU-808, quoted; the trade says about 90 %. The cells above hold 91 to 95 %.
    for (const chemistry of [lipo, liIon]) {
      expect(socAt(chemistry, 4.1)).toBeGreaterThan(0.85)
      expect(socAt(chemistry, 4.1)).toBeLessThan(0.95)
    }
  })

  test('the band holds the model and is wide where the curve is flat', () => {
    for (const chemistry of chemistries) {
      for (let volts = 2.4; volts < 4.4; volts += 0.05) {
        const { low, high } = socBandAt(chemistry, volts)
        expect(low).toBeLessThanOrEqual(socAt(chemistry, volts))
        expect(high).toBeGreaterThanOrEqual(socAt(chemistry, volts))
      }
    }
    expect(socBandAt(lipo, 3.75)).toEqual({ low: 0.233, high: 0.619 })
    expect(socBandAt(lipo, 4.2)).toEqual({ low: 1, high: 1 })
  })
})

describe('temperature', () => {
  // JEITA/BAJ guide of 20 April 2007, as in TI datasheets SLUSB10 fig. 6 and SLUSB09 fig. 5: 0.5C from 0 to 10 °C,
  // 1.0C from 10 to 45 °C. LiFePO4 cell sheets ask for 0.2C below 5 °C, which is the stricter and holds for all.
  test.each(chemistries)(
    '$name: 0.2C below 5 °C, 0.5C below 10 °C whatever the label, closed outside 0 to 45 °C',
    ({ temperatureBands, highestRate_C, full_V }) => {
      expect(temperatureBands.value).toEqual([
        { from_C: 0, to_C: 5, maxRate_C: 0.2, maxPerCell_V: full_V.value },
        { from_C: 5, to_C: 10, maxRate_C: 0.5, maxPerCell_V: full_V.value },
        { from_C: 10, to_C: 45, maxRate_C: highestRate_C.value, maxPerCell_V: full_V.value },
      ])
    },
  )

  // Two published production battery tables, relative to 25 °C at half charge: lowest and highest of the two.
  test.each([
    [-20, 10.3, 12.3],
    [0, 2.15, 2.65],
    [25, 1, 1],
    [40, 0.86, 0.861],
    [60, 0.79, 0.81],
  ])('at %f °C resistance is %f to %f times that at 25 °C', (temperature_C, low, high) => {
    expect(resistanceFactor(temperature_C)).toBeGreaterThanOrEqual(low - 1e-9)
    expect(resistanceFactor(temperature_C)).toBeLessThanOrEqual(high + 1e-9)
  })
})

describe('thresholds', () => {
  // Microchip MCP73831 (DS20001984) 2.79 to 3.0 V, MCP73861 2.8 to 2.85 V, Maxim MAX8819 3.0 V.
  test.each([lipo, lihv, liIon])('$name: precharge as the charge-management chips have it', ({ precharge_V }) => {
    expect(precharge_V.value).toBeGreaterThanOrEqual(2.79)
    expect(precharge_V.value).toBeLessThanOrEqual(3.0)
  })

  test.each(chemistries)('$name: damage, precharge, floors, storage and full voltage rise in this order', chemistry => {
    const { damage_V, precharge_V, loadFloor_V, restFloor_V, storage_V, full_V } = chemistry
    const volts = [damage_V, precharge_V, loadFloor_V, restFloor_V, storage_V, full_V].map(cited => cited.value)
    expect(volts).toEqual(volts.toSorted((a, b) => a - b))
  })

  test.each(chemistries)('$name: every number says where it comes from', chemistry => {
    for (const cited of Object.values(chemistry)
      .flat()
      .filter(value => typeof value === 'object'))
      expect(cited.source.length).toBeGreaterThan(10)
  })
})
