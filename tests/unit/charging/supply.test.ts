import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { inputOf } from '../../../src/charging/setting/input.ts'
import { flatOut_W } from '../../../src/charging/sources/load.ts'
import {
  behindCable,
  neededFor,
  smallestUsbSupply,
  soldPowers_W,
  suppliedTo,
  suppliesFor,
} from '../../../src/charging/sources/supply.ts'
import { lipo } from '../../../src/charging/things/chemistries.ts'
import { noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Source } from '../../../src/charging/things/source.ts'
import { largestStep_A } from '../../../src/charging/things/steps.ts'
import { pdOffers } from '../../../src/charging/things/usb-pd.ts'
import { someCharger, someChemistry } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'
import { judged, permitFor } from '../../support/judged.ts'

const pd = (power_W: number): Source => ({ kind: 'supply', offers: pdOffers(power_W), usbPd_W: power_W })
const feedOf = (source: Source) => inputOf({ source, house: noHouseLimits }).feed

describe('what a supply carries', () => {
  it('never asks more of the supply, of the charger or of its steps than they have', () => {
    fc.assert(
      fc.property(
        fc.double({ min: 5, max: 240, noNaN: true }),
        someCharger,
        someChemistry,
        (power_W, charger, chemistry) => {
          const pack = { chemistry, series: charger.minSeries ?? 1, parallel: 1, capacity_Ah: 60 }
          const { permit } = judged({ act: 'charge', pack, charger, source: pd(power_W), balanceLead: true })
          if (!permit) return
          const { feed, carried } = suppliedTo(permit)
          const output_W = Math.min(
            feed.power_W * (charger.efficiency ?? 0.85),
            charger.power_W ?? Number.POSITIVE_INFINITY,
          )
          const breaches = carried.filter(
            ({ series, cutoffPack_V, current_A = 0 }) =>
              Math.abs(cutoffPack_V - series * chemistry.full_V.value) > 1e-9 ||
              current_A * cutoffPack_V > output_W + 1e-6 ||
              current_A > largestStep_A(charger.currents),
          )
          expect(breaches).toEqual([])
        },
      ),
      cases(10_000),
    )
  })

  it('has a line for every cell count of the charger', () => {
    const charger = { currents: { kind: 'list', steps_A: [1, 2] }, minSeries: 2, maxSeries: 4 } as const
    const pack = { chemistry: lipo, series: 2, parallel: 1, capacity_Ah: 5 }
    const permit = permitFor({ act: 'charge', pack, charger, source: pd(65) })
    expect(suppliedTo(permit).carried.map(({ series }) => series)).toEqual([2, 3, 4])
  })

  it('has a line for the pack too, where no charger is known', () => {
    const pack = { chemistry: lipo, series: 8, parallel: 1, capacity_Ah: 5 }
    const { carried } = suppliedTo(permitFor({ act: 'charge', pack, source: pd(65) }))
    expect(carried.map(({ series }) => series)).toEqual([1, 2, 3, 4, 5, 6, 7, 8])
  })
})

describe('a USB-C cable', () => {
  // USB Type-C specification: 3 A without an electronic mark, 5 A with one; above 20 V only with the latter.
  it('holds a supply of 100 W to 60 W without a mark', () => {
    const feed = feedOf(behindCable(pd(100), 3))
    expect(feed).toMatchObject({ power_W: 60, offer: { voltage_V: 20, current_A: 3 } })
    expect(feedOf(behindCable(pd(100), 5))).toMatchObject({ power_W: 100 })
    expect(feedOf(behindCable(pd(240), 3))).toMatchObject({ power_W: 60 })
  })

  it('matters to no other source', () => {
    const bench: Source = { kind: 'supply', offers: [{ voltage_V: 12, current_A: 10 }] }
    expect(behindCable(bench, 3)).toEqual(bench)
  })

  it('holds a power bank too', () => {
    const bank: Source = { kind: 'power bank', label_Wh: 74, usbPd_W: 100 }
    expect(feedOf(behindCable(bank, 3))).toMatchObject({ power_W: 60 })
  })
})

describe('what a pack needs of a supply', () => {
  const pack = { chemistry: lipo, series: 4, parallel: 1, capacity_Ah: 5 }

  it('is no more than its charger gives', () => {
    const charger = { currents: { kind: 'list', steps_A: [1, 2, 5] }, power_W: 50 } as const
    const { current_A, input_W, heldBy } = neededFor(permitFor({ act: 'charge', pack, charger, current_A: 5 }))
    // 50 W / 16.8 V = 2.976 A; 50 W / 0.85 = 58.8 W.
    expect(current_A).toBeCloseTo(50 / 16.8, 9)
    expect(input_W).toBeCloseTo(50 / 0.85, 9)
    expect(heldBy?.kind).toBe('charger power')
  })

  it('is what the current asked for takes', () => {
    const needed = neededFor(permitFor({ act: 'charge', pack, current_A: 2 }))
    expect(needed).toMatchObject({ current_A: 2, heldBy: undefined, usb: { supply_W: 45 } })
    expect(needed.benches.map(({ voltage_V }) => voltage_V)).toEqual([12, 15, 19, 24])
  })
})

describe('what chargers need flat out', () => {
  const charger = {
    currents: { kind: 'list', steps_A: [1, 10] },
    power_W: 170,
    minInput_V: 13,
    maxInput_V: 20,
  } as const

  it('is the power on the label over what the charger passes on, times as many', () => {
    const one_W = flatOut_W(charger) ?? 0
    expect(one_W).toBeCloseTo(200, 9)
    expect(flatOut_W({ ...charger, efficiency: 0.5 })).toBe(340)
    const { input_W, usb, benches } = suppliesFor(3 * one_W, charger, { count: 3 })
    expect(input_W).toBeCloseTo(600, 9)
    expect(usb).toBeUndefined()
    // A fifth more than 600 W, at 15 and 19 V: the others lie outside of the input.
    expect(benches.map(({ voltage_V, current_A }) => [voltage_V, current_A])).toEqual([
      [15, 48],
      [19, 37.9],
    ])
  })

  it('is looked for at one voltage where one is told', () => {
    expect(suppliesFor(100, undefined, { voltage_V: 10 })).toMatchObject({
      usb: undefined,
      benches: [{ voltage_V: 10, current_A: 12 }],
    })
  })

  // 12 V at 10 A are 120 W, of which 10² × 0.2 = 20 W stay in the lead (Joule's law).
  it('is larger by what a lead takes, where that carries it at all', () => {
    const benchAt = (resistance_ohm: number, most_A = 50, minInput_V = 0) =>
      suppliesFor(100, { ...charger, minInput_V }, { voltage_V: 12, lead: { resistance_ohm, most_A } }).benches[0]
    expect(benchAt(0.2)?.drawn_A).toBeCloseTo(10, 9)
    expect(benchAt(0.2)?.current_A).toBe(12)
    expect(benchAt(0.2, 9)).toBeUndefined()
    expect(benchAt(0.5)).toBeUndefined()
    expect(benchAt(0.2, 50, 11)).toBeUndefined()
    const usb = (resistance_ohm: number) => smallestUsbSupply(40, undefined, { resistance_ohm, most_A: 50 })?.supply_W
    expect([usb(0), usb(1)]).toEqual([45, 60])
  })
})

describe('the smallest USB supply', () => {
  it.each([
    [10, 15],
    [15, 15],
    [26, 27],
    [40, 45],
    [45, 45],
    [60, 60],
    [61, 65],
    [99, 100],
    [200, 240],
  ])('for %i W is one of %i W', (input_W, supply_W) => {
    expect(smallestUsbSupply(input_W, undefined)?.supply_W).toBe(supply_W)
  })

  it('is one that the charger can use: no 5 V for an input from 9 V', () => {
    const charger = { currents: { kind: 'list', steps_A: [1] }, minInput_V: 9, maxInput_V: 12 } as const
    expect(smallestUsbSupply(10, charger)).toMatchObject({ supply_W: 20, offer: { voltage_V: 9 } })
    expect(smallestUsbSupply(30, charger)).toBeUndefined()
  })

  it('is none where no class is enough', () => {
    expect(smallestUsbSupply(241, undefined)).toBeUndefined()
    expect(Math.max(...soldPowers_W.value)).toBe(240)
  })
})
