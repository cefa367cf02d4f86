// The care of packs against published values, common practice, textbook formulas and an ODE library.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balanceTime_s, spreads } from '../../src/charging/setting/balancing.ts'
import { type Cell, cellOf, openCircuit_V, scaleResistance } from '../../src/charging/simulation/cell.ts'
import { simulateDischarge } from '../../src/charging/simulation/discharge.ts'
import { resistanceFactor } from '../../src/charging/simulation/resistance.ts'
import { lend } from '../../src/charging/sources/lend.ts'
import { batteryStore } from '../../src/charging/things/battery-store.ts'
import { lihv, liIon, lipo } from '../../src/charging/things/chemistries.ts'
import { restingVoltage, socAt } from '../../src/charging/things/curve.ts'
import { noHouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { mostApart_V } from '../../src/charging/things/practice.ts'
import { cellSpread } from '../../src/charging/upkeep/cell-spread.ts'
import { judgeHealth } from '../../src/charging/upkeep/health.ts'
import { boardResistance_ohm, equalise } from '../../src/charging/upkeep/parallel.ts'
import { storageMove } from '../../src/charging/upkeep/storage.ts'
import { someChemistry } from '../support/arbitraries.ts'
import { cases } from '../support/cases.ts'
import { judged, permitFor } from '../support/judged.ts'
import { integrateOde } from '../support/ode.ts'

const pack = (parts: Partial<Pack> = {}): Pack => ({
  chemistry: lipo,
  series: 4,
  parallel: 1,
  capacity_Ah: 1.5,
  ...parts,
})
/** Diffusion into a sphere in two parts, as rates of what the surface is ahead. */
const aheadRates = ({ capacity_Ah, diffusion_s }: Cell, into_A: number, fast: number, slow: number) => {
  const ahead = (into_A * diffusion_s) / 3600 / capacity_Ah
  return [(0.505 * ahead - fast) / (0.13 * diffusion_s), (0.495 * ahead - slow) / (0.743 * diffusion_s)]
}
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const closeTo = (value: number, expected: number, share: number) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(share * Math.abs(expected))

describe('storage', () => {
  it('is 3.85 V per cell for LiPo and LiHV (common practice: pack makers say 3.80 to 3.85 V)', () => {
    const full = { kind: 'soc', soc: 1 } as const
    expect(storageMove(pack(), full, noHouseLimits).storage_V).toBe(3.85)
    expect(storageMove(pack({ chemistry: lihv }), full, noHouseLimits).storage_V).toBe(3.85)
  })

  it('is never above that of the chemistry, whatever a club keeps', () => {
    const club = { storagePerCell_V: { LiPo: 4, LiHV: 4.1 } }
    for (const chemistry of [lipo, lihv]) {
      expect(storageMove(pack({ chemistry }), { kind: 'soc', soc: 1 }, club).storage_V).toBe(3.85)
    }
  })

  it('leaves 55.2 to 72.6 % in a 4.20 V cell, the range of 12 published cells at 3.85 V at rest', () => {
    // Open-circuit tables of Ai 2020, Chen 2020, Sunil 2025, Ramadass 2004, Mohtat 2020, an NMC111 pouch (BPX) and gauge tables.
    for (const chemistry of [lipo, liIon]) {
      const soc = socAt(chemistry, 3.85)
      expect(soc).toBeGreaterThan(0.552)
      expect(soc).toBeLessThan(0.726)
    }
  })
})

describe('a discharge', () => {
  it('at constant current takes charge over current (definition of the ampere-hour)', () => {
    const { duration_s, charge_Ah } = simulateDischarge({ pack: pack(), fromSoc: 0.9, toSoc: 0.5, current_A: 1.2 })
    expect(duration_s).toBeCloseTo((0.4 * 1.5 * 3600) / 1.2, 6)
    expect(charge_Ah).toBeCloseTo(0.6, 12)
  })

  it('at constant power ends where the same equations solved by odex end, within 0.3 %', () => {
    fc.assert(
      fc.property(someChemistry, between(0.3, 1), between(0.05, 0.5), (chemistry, from, share) => {
        const some = pack({ chemistry, series: 1 })
        const power_W = share * some.capacity_Ah * 3.2
        const toSoc = from * 0.4
        const run = simulateDischarge({ pack: some, fromSoc: from, toSoc, current_A: 50, power_W })
        const cell = cellOf(some, 25)
        const { series_ohm } = cell
        const [soc = 0] = integrateOde(
          (_, [soc = 0, fast = 0, slow = 0]) => {
            const inner_V = openCircuit_V(cell, soc + fast + slow)
            const out_A = (inner_V - Math.sqrt(inner_V ** 2 - 4 * series_ohm * power_W)) / (2 * series_ohm)
            return [-out_A / 3600 / some.capacity_Ah, ...aheadRates(cell, -out_A, fast, slow)]
          },
          [from, 0, 0],
          run.duration_s,
        )
        closeTo(from - soc, from - toSoc, 0.003)
      }),
      cases(100),
    )
  })
})

describe('cells', () => {
  it('judges by spreads of the trade: 0.03 V balanced, 0.10 V to be balanced first, 0.20 V not charged (common practice)', () => {
    expect(spreads.value).toEqual({ uneven_V: 0.03, apart_V: 0.1, farApart_V: 0.2 })
  })

  it('balances 10 % of 1500 mAh at 0.1 A in an hour and a half (charge over current)', () => {
    const { chemistry } = pack()
    const cells_V = [0.6, 0.6, 0.5, 0.6].map(soc => restingVoltage(chemistry, soc))
    closeTo(balanceTime_s(pack(), cellSpread(cells_V), 0.1), 5400, 1e-6)
  })
})

describe('a parallel board', () => {
  const soc = (value: number) => ({ kind: 'soc' as const, soc: value })
  const leastCell = (one: Pack) => {
    const cell = scaleResistance(cellOf(one, 25), 1 - one.chemistry.resistanceSpread.value)
    return { ...cell, series_ohm: cell.series_ohm + boardResistance_ohm.value / 2 / one.series }
  }

  it('wants packs within 0.1 V per cell (common practice)', () => {
    expect(mostApart_V.value).toBe(0.1)
  })

  it("sends the volts between two packs through their resistances at once (Ohm's law)", () => {
    const [one, other] = [pack(), pack({ capacity_Ah: 1.3 })]
    const flows = equalise([
      { pack: one, from: soc(0.7) },
      { pack: other, from: soc(0.5) },
    ])
    const apart_V = restingVoltage(lipo, 0.7) - restingVoltage(lipo, 0.5)
    const current_A = apart_V / (leastCell(one).series_ohm + leastCell(other).series_ohm)
    closeTo(flows[1]?.atOnce_A ?? 0, current_A, 1e-9)
    closeTo(flows[0]?.atOnce_A ?? 0, -current_A, 1e-9)
  })

  it('keeps to the charge that flows in the first minute by odex, within 2 %, and to nothing in sum', () => {
    fc.assert(
      fc.property(
        someChemistry,
        between(0.2, 0.9),
        between(0.05, 0.3),
        between(0.5, 5),
        (chemistry, low, more, other_Ah) => {
          const packs = [pack({ chemistry }), pack({ chemistry, capacity_Ah: other_Ah })] as const
          const start = [Math.min(1, low + more), low] as const
          const flows = equalise(packs.map((one, index) => ({ pack: one, from: soc(start[index] as number) })))
          const cells = packs.map(leastCell)
          const y = integrateOde(
            (_, state) => {
              const inner_V = cells.map((_, index) => {
                const [at = 0, fast = 0, slow = 0] = state.slice(index * 3, index * 3 + 3)
                return openCircuit_V(cells[index] as (typeof cells)[0], at + fast + slow)
              })
              const [first, second] = cells as [(typeof cells)[0], (typeof cells)[0]]
              const flow_A = ((inner_V[0] as number) - (inner_V[1] as number)) / (first.series_ohm + second.series_ohm)
              return cells.flatMap((cell, index) => {
                const into_A = index === 0 ? -flow_A : flow_A
                const [, fast = 0, slow = 0] = state.slice(index * 3, index * 3 + 3)
                return [into_A / 3600 / cell.capacity_Ah, ...aheadRates(cell, into_A, fast, slow)]
              })
            },
            [start[0], 0, 0, start[1], 0, 0],
            60,
          )
          const into_Ah = ((y[3] as number) - start[1]) * other_Ah
          closeTo(flows[1]?.firstMinute_A ?? 0, into_Ah * 60, 0.02)
          expect((flows[0]?.firstMinute_A ?? 0) + (flows[1]?.firstMinute_A ?? 0)).toBeCloseTo(0, 6)
        },
      ),
      cases(60),
    )
  })
})

describe('health', () => {
  it('takes a cell at 0 °C for one of 2.15 to 2.65 times its resistance at 25 °C (two published production battery tables)', () => {
    expect(resistanceFactor(0)).toBeGreaterThan(2.15)
    expect(resistanceFactor(0)).toBeLessThan(2.65)
    const cells_ohm = [0.02 * resistanceFactor(0)]
    closeTo(judgeHealth({ pack: pack(), cells_ohm, temperature_C: 0 }).at25C_ohm, 0.02, 1e-9)
  })

  it.each([
    ['7.5 Ah power pouch, Ecker et al. 2015', 0.0495],
    ['2.28 Ah energy pouch, Ai et al. 2020', 0.137],
    ['5.45 Ah high-rate pouch, from its measured charges', 0.056],
  ])('finds the %s sound when its reading is half of %f ohm·Ah', (_, whole_ohmAh) => {
    // A reading of seconds is about half of what a long charge meets: measured cells of tests/outside/charges.
    const cells_ohm = [whole_ohmAh / 2.05 / 1.5]
    expect(judgeHealth({ pack: pack(), cells_ohm }).age).toBe('as its like')
  })

  it('retires at three times the resistance when new, and spares from two (common practice)', () => {
    const at = (times: number) => judgeHealth({ pack: pack(), cells_ohm: [0.005 * times], fresh_ohm: 0.005 }).age
    expect([at(1.2), at(1.7), at(2.2), at(3.1)]).toEqual(['as its like', 'aged', 'tired', 'worn out'])
  })
})

describe('lending', () => {
  it('stops where odex, at the same constant power, meets the floor: within half a percent of the charge', () => {
    fc.assert(
      fc.property(someChemistry, between(0.3, 1), between(0.05, 1), (chemistry, from, rate_C) => {
        const some = pack({ chemistry })
        const power_W = rate_C * some.capacity_Ah * 3 * some.series * 0.85
        const { permit } = judged({ act: 'drain', pack: some, from: { kind: 'soc', soc: from } })
        if (!permit) return
        const lent = lend(permit, { power_W })
        const store = batteryStore(some, noHouseLimits, from)
        const out_A = (at: number) => {
          const rest_V = store.rest_V(Math.max(0, at))
          return (
            (rest_V - Math.sqrt(rest_V ** 2 - 4 * store.resistance_ohm * (power_W / 0.85))) / (2 * store.resistance_ohm)
          )
        }
        const [end = 0] = integrateOde((_, [at = 0]) => [-out_A(at) / 3600 / some.capacity_Ah], [from], lent.duration_s)
        expect(Math.abs(end - lent.leftSoc)).toBeLessThan(0.005)
        // Above both floors there, and under one of them a little further on.
        const aboveFloor_V = (at: number) =>
          Math.min(
            store.rest_V(at) - out_A(at) * store.resistance_ohm - lent.stop_V,
            store.rest_V(at) - lent.restStopPerCell_V * some.series,
          )
        expect(aboveFloor_V(end)).toBeGreaterThanOrEqual(-0.01 * some.series)
        if (end > 0.02) expect(aboveFloor_V(end - 0.015)).toBeLessThan(0)
      }),
      cases(100),
    )
  })

  it('gives less than the watt-hours on the label', () => {
    const lent = lend(permitFor({ act: 'drain', pack: pack() }), { power_W: 10 })
    expect(lent.given_Wh).toBeLessThan(3.7 * 4 * 1.5)
    expect(socAt(lipo, 3.6)).toBeLessThan(lent.leftSoc + 0.01)
  })
})
