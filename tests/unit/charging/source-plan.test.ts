// Plans on sources: what each kind carries, and what is said where it is not drained.

import { describe, expect, it } from 'vitest'
import { countedPacks } from '../../../src/charging/simulation/supply-run.ts'
import {
  planSource,
  type SourcePlan,
  type SourcePlanRequest,
} from '../../../src/charging/sources/source-plan.ts'
import { lihv, liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'

const wren: Pack = { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 }
const from = { kind: 'rest', perCell_V: 3.7 } as const
const heron: Pack = { chemistry: liIon, series: 4, parallel: 2, capacity_Ah: 5 }

function planned(request: Omit<SourcePlanRequest, 'pack' | 'from'> & Partial<SourcePlanRequest>): SourcePlan {
  const plan = planSource({ pack: wren, from, ...request })
  if ('refusal' in plan) throw new Error(`refused: ${plan.refusal.kind}`)
  return plan
}

describe('planSource', () => {
  it('says whether a wanted count will do, and what is the most', () => {
    const source = { kind: 'battery', pack: heron } as const
    const { most = 0 } = planned({ source })
    expect(most).toBeGreaterThan(3)
    expect(planned({ source, count: most })).toMatchObject({ planned: most, enough: true, most })
    expect(planned({ source, count: most + 3 })).toMatchObject({ planned: most, enough: false, most })
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
    expect([most, leftSoc]).toEqual([planned({ source }).most, planned({ source }).leftSoc])
  })

  it('charges fewer from a battery of high resistance', () => {
    const worn = { ...heron, cellResistance_ohm: 0.3 }
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
    expect(planSource({ pack: wren, source, from: full })).toMatchObject({
      refusal: { kind: 'charged already' },
    })
  })

  it('refuses a damaged pack before it looks at the source', () => {
    const source = { kind: 'power bank', label_Wh: 74 } as const
    const dead = { kind: 'rest', perCell_V: 2 } as const
    expect(planSource({ pack: wren, source, from: dead })).toMatchObject({
      refusal: { kind: 'damaged cell' },
    })
  })

  it('reads a vehicle of 24 V as two batteries in series', () => {
    const outlet = { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', capacity_Ah: 60 } as const
    const one = planned({ source: { ...outlet, rest_V: 12.6 } })
    const two = planned({ source: { ...outlet, rest_V: 25.2 } })
    expect(two.setting.feed?.store?.restFloor_V).toBeCloseTo(24.48, 9)
    expect(two.most).toBeGreaterThanOrEqual(2 * (one.most ?? 0))
    const charger = { currents: { kind: 'list', steps_A: [0.5] }, minInput_V: 11, maxInput_V: 18 } as const
    for (const engine of ['off', 'running'] as const) {
      const source = { kind: 'vehicle outlet', fuse_A: 10, engine, nominal_V: 24 } as const
      expect(planSource({ pack: wren, from, charger, source })).toMatchObject({
        refusal: { kind: 'input window' },
      })
    }
  })
})
