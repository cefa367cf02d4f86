// A lead of one's own between source and charger: what it takes of the volts, and what still comes through (Ohm's law).

import { describe, expect, it } from 'vitest'
import { inputOf } from '../../../src/charging/setting/input.ts'
import type { SourceLead } from '../../../src/charging/situation/situation.ts'
import { planSource } from '../../../src/charging/sources/source-plan.ts'
import { liIon, lipo } from '../../../src/charging/things/chemistries.ts'
import { noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Source } from '../../../src/charging/things/source.ts'
import { permitFor } from '../../support/judged.ts'

const lead = (resistance_ohm: number, most_A = Number.POSITIVE_INFINITY): SourceLead => ({ resistance_ohm, most_A })
const feedOf = (source: Source, through?: SourceLead, minInput_V?: number) => {
  const charger = { currents: { kind: 'list', steps_A: [1] }, minInput_V } as const
  return inputOf({ source, house: noHouseLimits, charger, lead: through }).feed
}
const supply: Source = { kind: 'supply', offers: [{ voltage_V: 12, current_A: 5 }] }
const car: Source = { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', rest_V: 12.5, capacity_Ah: 60 }
const field: Source = { kind: 'battery', pack: { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 10 } }

describe('behind a lead', () => {
  it('a supply gives what is left of its volts, and what the charger still takes', () => {
    expect(feedOf(supply, lead(0.2))).toMatchObject({ lowest_V: 11, current_A: 5, power_W: 55 })
    // 12 V less 11 V over 1 ohm.
    expect(feedOf(supply, lead(1), 11)).toMatchObject({ lowest_V: 11, current_A: 1, power_W: 11 })
    // A quarter of V²/R is the most that comes through any wire.
    expect(feedOf(supply, lead(4))?.power_W).toBeCloseTo(144 / 16, 9)
    expect(feedOf(supply, lead(0.2, 2))).toMatchObject({ current_A: 2, lowest_V: 11.6 })
  })

  it.each([
    ['of a vehicle', car],
    ['of a pack', field],
  ])('the battery %s is met lower, with no more than that', (_, source) => {
    const [bare, behind] = [feedOf(source), feedOf(source, lead(0.2))]
    expect(behind?.current_A).toBeCloseTo(bare?.current_A ?? 0, 9)
    expect(behind?.lowest_V).toBeCloseTo((bare?.lowest_V ?? 0) - 0.2 * (bare?.current_A ?? 0), 9)
    expect(behind?.store?.loadFloor_V).toBe(bare?.store?.loadFloor_V)
    expect(feedOf(source, lead(0.2, 1))?.current_A).toBe(1)
    const thin = feedOf(source, lead(2), 10)
    expect(thin?.lowest_V).toBeGreaterThanOrEqual(10)
    expect(thin?.current_A).toBeLessThan(2)
  })

  it.each([car, field])('fewer packs are charged, and what is lost goes up', source => {
    const pack = { chemistry: lipo, series: 3, parallel: 1, capacity_Ah: 1.3 }
    const planOf = (through?: SourceLead) =>
      planSource(permitFor({ act: 'charge', pack, source, lead: through, from: { kind: 'named', name: 'empty' } }), 1)
    const [bare, behind] = [planOf(), planOf(lead(1))]
    expect(behind.most).toBeLessThan(bare.most ?? 0)
    expect(behind.balance.sourceLoss_Wh).toBeGreaterThan(2 * bare.balance.sourceLoss_Wh)
  })
})
