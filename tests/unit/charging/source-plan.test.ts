// Plans on sources: what each kind carries, and what is said where it is not drained.

import { describe, expect, it } from 'vitest'
import { countedPacks } from '../../../src/charging/simulation/supply-run.ts'
import type { Told } from '../../../src/charging/situation/situation.ts'
import { planSource, type SourcePlan } from '../../../src/charging/sources/source-plan.ts'
import { sizeFor } from '../../../src/charging/sources/source-size.ts'
import { lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import type { HouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import type { Source } from '../../../src/charging/things/source.ts'
import { permitFor, refusedBy } from '../../support/judged.ts'

const wren: Pack = { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 }
const from = { kind: 'rest', perCell_V: 3.7 } as const
const heron: Pack = { chemistry: liIon, series: 4, parallel: 2, capacity_Ah: 5 }

interface Wanted extends Partial<Told> {
  readonly source: Source
  readonly count?: number
  readonly limits?: HouseLimits
}

const told = ({ count: _, limits: __, ...rest }: Wanted): Told => ({ act: 'charge', pack: wren, from, ...rest })
const planned = (wanted: Wanted): SourcePlan => planSource(permitFor(told(wanted), wanted.limits), wanted.count)

describe('the size of a source', () => {
  it('is what carries so many for sure: a station of that label carries them, one of a little less does not', () => {
    const size = sizeFor(permitFor({ act: 'charge', pack: wren, from }), 7)
    const offers = [{ voltage_V: 12, current_A: 10 }]
    const station = (label_Wh: number) => planned({ source: { kind: 'power bank', label_Wh, offers } }).between?.low
    expect(station(size.station_Wh * 1.0001)).toBe(7)
    expect(station(size.station_Wh * 0.999)).toBe(6)
    expect(size.deepCycle_Ah * 12.2 * 0.5).toBeCloseTo(size.sure_Wh, 6)
  })
})

describe('planSource', () => {
  it('counts what the sun feeds in an hour, and says nothing of that where there is none', () => {
    const { perHour = 0, balance } = planned({ source: { kind: 'watts', of: 'panel', power_W: 100 } })
    expect(perHour * balance.sourceOut_Wh).toBeCloseTo(50, 6)
    expect(planned({ source: { kind: 'watts', of: 'mains', power_W: 100 } }).perHour).toBeUndefined()
  })

  it('says whether a wanted count will do, and what is the most', () => {
    const source = { kind: 'battery', pack: heron } as const
    const { most = 0 } = planned({ source })
    expect(most).toBeGreaterThan(3)
    expect(planned({ source, count: most })).toMatchObject({ planned: most, enough: true, most })
    expect(planned({ source, count: most + 3 })).toMatchObject({ planned: most, enough: false, most })
  })

  it('counts what a charger of 80 and of 90 % leaves, with a twentieth less and more, and plans what is sure', () => {
    const offers = [{ voltage_V: 12, current_A: 10 }]
    const { all_Wh } = sizeFor(permitFor({ act: 'charge', pack: wren, from }), 1)
    const source = (packs: number) => ({ kind: 'power bank', label_Wh: (all_Wh * packs) / 0.85, offers }) as const
    // 20.5 × 0.80 ÷ 0.85 × 0.95 = 18.3, and × 0.90 ÷ 0.85 × 1.05 = 22.8.
    expect(planned({ source: source(20.5) })).toMatchObject({ most: 20, between: { low: 18, high: 22 }, planned: 18 })
    expect(planned({ source: source(1.1) })).toMatchObject({ most: 1, between: { low: 0, high: 1 }, planned: 1 })
    expect(planned({ source: source(1.2) })).toMatchObject({ most: 1, between: { low: 1, high: 1 } })
  })

  it('leaves only a twentieth where the efficiency of the charger is told', () => {
    const charger = { currents: { kind: 'list', steps_A: [0.5] }, efficiency: 0.85 } as const
    const offers = [{ voltage_V: 12, current_A: 10 }]
    const { all_Wh } = sizeFor(permitFor({ act: 'charge', pack: wren, charger, from }), 1)
    const source = { kind: 'power bank', label_Wh: (all_Wh * 20.5) / 0.85, offers } as const
    // 20.5 × 0.95 = 19.5 and × 1.05 = 21.5.
    expect(planned({ source, charger })).toMatchObject({ most: 20, between: { low: 19, high: 21 } })
  })

  it('charges fewer from a source that is half charged', () => {
    const source = { kind: 'battery', pack: heron } as const
    expect(planned({ source, sourceSoc: 0.5 }).most).toBeLessThan(planned({ source }).most ?? 0)
  })

  it('stops earlier at a higher floor of the house, and at the lowest input of the charger', () => {
    const source = { kind: 'battery', pack: heron } as const
    const plain = planned({ source }).most ?? 0
    const limits = { sourceFloorPerCell_V: { 'Li-ion': 3.6 } }
    expect(planned({ source, limits }).most).toBeLessThan(plain)
    const charger = { currents: { kind: 'list', steps_A: [0.5] }, minInput_V: 14.4 } as const
    expect(planned({ source, charger }).most).toBeLessThan(plain)
  })

  it('never lowers the floor of the chemistry for a house', () => {
    const source = { kind: 'battery', pack: heron } as const
    const limits = { sourceFloorPerCell_V: { 'Li-ion': 2 } }
    const { most, leftSoc, setting } = planned({ source, limits })
    expect(setting.feed?.store?.loadFloor_V).toBeCloseTo(12, 9)
    expect(setting.feed?.store?.restFloor_V).toBeCloseTo(12.8, 9)
    expect([most, leftSoc]).toEqual([planned({ source }).most, planned({ source }).leftSoc])
  })

  it('takes nothing from a battery that rests at its floor', () => {
    const low = { chemistry: lipo, series: 4, parallel: 1, capacity_Ah: 5 } as const
    const source = { kind: 'battery', pack: low } as const
    // 3.60 V at rest is about a tenth of the charge.
    expect(refusedBy(told({ source, sourceSoc: 0.05 }))).toContain('sourceAtFloor')
    expect(refusedBy(told({ source, sourceSoc: 0.3 }))).toEqual([])
  })

  it('counts what a power bank that is half full holds', () => {
    const source = { kind: 'power bank', label_Wh: 74 } as const
    expect(planned({ source, sourceSoc: 0.5 }).most).toBe(planned({ source: { ...source, label_Wh: 37 } }).most)
    expect(planned({ source, sourceSoc: 0.5, count: 1 }).leftSoc).toBeLessThan(0.5)
  })

  it('charges fewer from a battery of high resistance', () => {
    const worn = { ...heron, cellResistance_ohm: 0.6 }
    expect(planned({ source: { kind: 'battery', pack: worn } }).most).toBeLessThan(
      planned({ source: { kind: 'battery', pack: heron } }).most ?? 0,
    )
  })

  it('does not count what a supply carries without end', () => {
    const plan = planned({ source: { kind: 'supply', offers: [{ voltage_V: 20, current_A: 3 }] }, count: 4 })
    expect(plan).toMatchObject({ planned: 4, enough: true })
    expect(plan.most).toBeUndefined()
    expect(plan.balance.sourceLoss_Wh).toBe(0)
  })

  it('counts no further than anybody would', () => {
    const tiny: Pack = { chemistry: lipo, series: 1, parallel: 1, capacity_Ah: 0.02 }
    expect(planned({ pack: tiny, source: { kind: 'power bank', label_Wh: 300 } }).most).toBe(countedPacks)
  })

  it('has nothing to plan for packs that are at their target already', () => {
    const source = { kind: 'power bank', label_Wh: 74 } as const
    const full = { kind: 'soc', soc: 1 } as const
    expect(refusedBy(told({ source, from: full }))).toContain('nothingToCharge')
  })

  it('refuses a damaged pack before it looks at the source', () => {
    const source = { kind: 'power bank', label_Wh: 74 } as const
    const dead = { kind: 'rest', perCell_V: 2 } as const
    expect(refusedBy(told({ source, from: dead }))).toEqual(['deadCell'])
  })

  it('reads a vehicle of 24 V as two batteries in series', () => {
    const outlet = { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', capacity_Ah: 60 } as const
    const one = planned({ source: { ...outlet, rest_V: 12.6 } })
    const two = planned({ source: { ...outlet, rest_V: 25.2 } })
    expect(two.setting.feed?.store?.restFloor_V).toBeCloseTo(2 * (one.setting.feed?.store?.restFloor_V ?? 0), 9)
    expect(two.most).toBeGreaterThanOrEqual(2 * (one.most ?? 0))
    const charger = { currents: { kind: 'list', steps_A: [0.5] }, minInput_V: 11, maxInput_V: 18 } as const
    for (const engine of ['off', 'running'] as const) {
      const source = { kind: 'vehicle outlet', fuse_A: 10, engine, nominal_V: 24 } as const
      expect(refusedBy(told({ charger, source }))).toContain('inputOutside')
    }
  })
})
