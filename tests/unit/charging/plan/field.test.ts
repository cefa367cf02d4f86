// Field sessions of one small pack many times: its own charge gives the time and the energy, and paper does the rest.

import { describe, expect, test } from 'vitest'
import { budgetOf, feedsOf, stopOf } from '../../../../src/charging/plan/budget.ts'
import type { FieldPlan, FieldSession, FieldSource, PackGroup } from '../../../../src/charging/plan/field.ts'
import { planField } from '../../../../src/charging/plan/plan.ts'
import { chargeTimeBand } from '../../../../src/charging/setting/band.ts'
import { chargeOf } from '../../../../src/charging/setting/timed-charge.ts'
import { drain } from '../../../../src/charging/simulation/drain.ts'
import { batteryStore } from '../../../../src/charging/things/battery-store.ts'
import type { Charger } from '../../../../src/charging/things/charger.ts'
import { lipo } from '../../../../src/charging/things/chemistries.ts'
import type { Pack } from '../../../../src/charging/things/pack.ts'
import type { Source } from '../../../../src/charging/things/source.ts'

const pack = (capacity_Ah: number, series = 3): Pack => ({ chemistry: lipo, series, parallel: 1, capacity_Ah })
const group = (parts: Partial<PackGroup> = {}): PackGroup => ({
  pack: pack(1),
  count: 1,
  from: { kind: 'rest', perCell_V: 3.7 },
  ...parts,
})
const charger: Charger = { currents: { kind: 'range', from_A: 0.1, to_A: 5, increment_A: 0.1 }, power_W: 60 }
const planOf = (parts: Partial<FieldSession>): FieldPlan =>
  planField({
    packs: [group()],
    chargers: [charger],
    sources: [],
    around: { house: {}, dangers: [], doubts: [] },
    ...parts,
  })

const alone = planOf({})
const takes_min = alone.wait_min
const takes_Wh = alone.charges[0]?.energy_Wh as number
const three = [group({ count: 3 })]

/** Of each charge its group, number, port and source, and its start and end in charges of the one pack. */
const charges = (plan: FieldPlan) =>
  plan.charges.map(({ group, number, port, source, start_s, end_s }) => [
    [group, number, port, source],
    [start_s / 60 / takes_min, end_s / 60 / takes_min],
  ])
const left = (plan: FieldPlan) => plan.left.map(({ group, count, why }) => [group, count, why.kind])

describe('outlets', () => {
  test('1 A into 3S takes the long end of its band and a minute to connect, and 12.6 W at its end', () => {
    const { permit, setting } = alone.charges[0] as FieldPlan['charges'][number]
    const { charge, time_s, bands } = chargeTimeBand(chargeOf(permit, setting))
    expect(setting.current_A).toBe(1)
    expect(takes_min).toBe(1 + Math.ceil(time_s.high / 60))
    expect(takes_Wh).toBeCloseTo((charge.energy_Wh * bands().charge_Ah.high) / charge.charge_Ah / 0.8, 9)
    expect(alone.output_W).toBeCloseTo(12.6, 9)
    expect(charges(alone)).toEqual([
      [
        [0, 1, 0, undefined],
        [0, 1],
      ],
    ])
    expect(alone).toMatchObject({ ready: 1, bound: { ready: 1, wait_min: takes_min }, pace: 'calm', left: [] })
  })

  test('two outlets: two at once, and the third behind the first', () => {
    const plan = planOf({ packs: three, chargers: [charger, charger] })
    expect(charges(plan)).toEqual([
      [
        [0, 1, 0, undefined],
        [0, 1],
      ],
      [
        [0, 2, 1, undefined],
        [0, 1],
      ],
      [
        [0, 3, 0, undefined],
        [1, 2],
      ],
    ])
    expect(plan).toMatchObject({ ready: 3, wait_min: 4 * takes_min })
    expect(plan.output_W).toBeCloseTo(25.2, 9)
  })

  test.each([
    ['25.2 W are enough for two', 25.21, undefined],
    ['of less each gets its half', 25, 12.5],
  ])('that share their watts: %s', (_, shared_W, share_W) => {
    const plan = planOf({ packs: [group({ count: 2 })], chargers: [charger, charger], shared_W })
    expect(plan.share_W).toBe(share_W)
    expect(plan.output_W).toBeCloseTo(25.2, 9)
    for (const { setting } of plan.charges) expect(setting.current_A * 12.6).toBeLessThanOrEqual(share_W ?? shared_W)
  })

  test('the largest charge of an outlet counts, not the last', () => {
    const plan = planOf({ packs: [group({ pack: pack(0.5) }), group({ pack: pack(2) })] })
    expect(plan.output_W).toBeCloseTo(25.2, 9)
  })
})

test('two kinds take their own times, the shorter first', () => {
  const [small, large] = [group({ pack: pack(1), current_A: 1 }), group({ pack: pack(2), current_A: 1 })]
  const [small_min, large_min] = [small, large].map(one => planOf({ packs: [one] }).wait_min) as [number, number]
  const plan = planOf({ packs: [large, small] })
  expect(plan.charges.map(one => one.group)).toEqual([1, 0])
  expect(plan.wait_min).toBe(2 * small_min + large_min)
})

test('a current below what the charger sets gives way to the usual one', () => {
  expect(planOf({ packs: [group({ current_A: 0.05 })] }).wait_min).toBe(takes_min)
  expect(planOf({ packs: [group({ current_A: 0.1 })] }).charges[0]?.setting.current_A).toBe(0.1)
})

describe('what is left out', () => {
  const swollen = group({ dangers: ['swollen'] })
  const full = group({ count: 2, from: { kind: 'soc', soc: 0.99 } })

  test.each<readonly [what: string, parts: Partial<FieldSession>, ready: number, left: unknown[]]>([
    ['what nobody flies', { packs: three, flights: 2 }, 2, [[0, 1, 'not wanted']]],
    ['nothing where all fly', { packs: three, flights: 3 }, 3, []],
    ['what is full already is ready', { packs: [full], flights: 1 }, 2, []],
    ['and counts for the flights', { packs: [three[0] as PackGroup, full], flights: 3 }, 3, [[0, 2, 'not wanted']]],
    [
      'nearly full is not',
      { packs: [{ ...full, from: { kind: 'soc', soc: 0.98 } }], flights: 0 },
      0,
      [[0, 2, 'not wanted']],
    ],
    [
      'a pack of which nothing is told is landed',
      { packs: [{ pack: pack(1), count: 1 }], flights: 0 },
      0,
      [[0, 1, 'not wanted']],
    ],
    [
      'by group',
      { packs: [...three, swollen], flights: 1 },
      1,
      [
        [0, 2, 'not wanted'],
        [1, 1, 'never'],
      ],
    ],
    ['of one group or another', { packs: [group(), ...three], flights: 2 }, 2, [[1, 2, 'not wanted']]],
    ['a swollen pack', { packs: [group(), swollen] }, 1, [[1, 1, 'never']]],
    ['even a full one', { packs: [{ ...full, dangers: ['swollen'] }] }, 0, [[0, 2, 'never']]],
    [
      'what no charger takes',
      { packs: [group({ pack: pack(1, 6) }), swollen], chargers: [{ ...charger, maxSeries: 4 }] },
      0,
      [
        [0, 1, 'nowhere'],
        [1, 1, 'never'],
      ],
    ],
    ['what comes too late', { packs: three, readyBy_s: 60 * takes_min - 1, flights: 2 }, 1, [[0, 2, 'time']]],
  ])('%s', (_, parts, ready, out) => {
    const plan = planOf(parts)
    expect([plan.ready, plan.bound.ready, left(plan)]).toEqual([ready, ready, out])
  })
})

describe('a deadline', () => {
  test('that all keep leaves them calm', () => {
    expect(planOf({ packs: three, readyBy_s: 180 * takes_min })).toMatchObject({ ready: 3, pace: 'calm' })
  })

  test('a minute less hurries them, to no more than 2C', () => {
    const plan = planOf({ packs: three, readyBy_s: 180 * takes_min - 1 })
    expect(plan).toMatchObject({ ready: 3, pace: 'hurried' })
    for (const { setting, end_s } of plan.charges) {
      expect(setting.current_A).toBeGreaterThan(1)
      expect(setting.current_A).toBeLessThanOrEqual(2)
      expect(end_s).toBeLessThan(180 * takes_min)
    }
  })

  test('where a hurry has no more ready they stay calm', () => {
    const told = [group({ count: 3, current_A: 1 })]
    const plan = planOf({ packs: told, readyBy_s: 180 * takes_min - 1 })
    expect([plan.pace, plan.ready, left(plan)]).toEqual(['calm', 2, [[0, 1, 'time']]])
  })
})

const battery = (soc = 1): FieldSource => ({ source: { kind: 'battery', pack: pack(2, 4) }, soc })
const bank = (label_Wh: number): Source => ({ kind: 'power bank', label_Wh, offers: [{ voltage_V: 12, current_A: 3 }] })

describe('sources', () => {
  test('a power bank gives 85 % of its label, to the last pack that it holds', () => {
    const label_Wh = (2 * takes_Wh) / 0.85
    const enough = planOf({ packs: three, sources: [{ source: bank(label_Wh) }] })
    expect([enough.ready, left(enough)]).toEqual([2, [[0, 1, 'energy']]])
    expect(enough.sources[0]?.taken_Wh).toBeCloseTo(2 * takes_Wh, 9)
    expect(enough.sources[0]?.available_Wh).toBeCloseTo(2 * takes_Wh, 9)
    expect(enough.sources[0]).toMatchObject({ most_W: 36, stop: undefined })
    expect(planOf({ packs: three, sources: [{ source: bank(label_Wh - 0.1) }] }).ready).toBe(1)
    expect(planOf({ packs: three, sources: [{ source: bank(2 * label_Wh), soc: 0.5 }] }).ready).toBe(2)
  })

  test('each outlet hangs on one of two batteries, and is told where to stop', () => {
    const plan = planOf({ packs: three, chargers: [charger, charger], sources: [battery(), battery(0.6)] })
    expect(plan.ready).toBe(3)
    for (const [at, use] of plan.sources.entries()) {
      const onIt = plan.charges.filter(({ source }) => source === at)
      expect(use.taken_Wh).toBeCloseTo(onIt.length * takes_Wh, 9)
      expect(use.taken_Wh).toBeLessThanOrEqual(use.available_Wh)
      // A plan may come from a worker, as data.
      for (const { setting } of onIt)
        expect([setting.feed?.power_W, setting.feed?.store]).toEqual([use.most_W, undefined])
      // 3.4 V a cell, and 12.6 W at 85 %.
      expect(use.stop).toEqual({ volts: 4 * 3.4, at: 'load' })
      expect(use.drawn_W).toBeCloseTo(12.6 / 0.85, 9)
    }
    expect(new Set(plan.charges.map(({ source }) => source)).size).toBe(2)
  })

  test('one that is drained already feeds nothing', () => {
    const plan = planOf({ sources: [battery(0.05), battery()] })
    expect(plan.charges.map(({ source }) => source)).toEqual([1])
    expect(plan.sources[0]).toMatchObject({ taken_Wh: 0, available_Wh: 0, drawn_W: 0, most_W: 0, stop: undefined })
  })

  test('20 W for two outlets that want 14.8 W each: none draws more than its share', () => {
    const plan = planOf({
      packs: three,
      chargers: [charger, charger],
      sources: [{ source: { kind: 'watts', of: 'supply', power_W: 20 } }],
    })
    expect(plan.ready).toBe(3)
    expect(plan.wait_min).toBeLessThan((1 + 2 + 3) * takes_min)
    expect(plan.sources[0]?.drawn_W).toBeLessThanOrEqual(20)
  })
})

describe('what a source can give', () => {
  const offer = { voltage_V: 12, current_A: 5 }
  const supply: FieldSource = { source: { kind: 'supply', offers: [offer] } }
  const store = batteryStore(pack(2, 4), {}, 1)
  const most = (power_W: number): number => {
    const long_s = (store.energyBetween_Wh(0, 1) * 3600) / power_W
    return drain(store, 1, [{ power_W, duration_s: long_s }]).delivered_Wh
  }

  test.each([
    ['nothing where it feeds no charger', supply, [], 100, 0, 0],
    [
      'the strongest of its offers',
      supply,
      [
        { power_W: 60, offer },
        { power_W: 40, offer },
      ],
      100,
      60,
      Number.POSITIVE_INFINITY,
    ],
    [
      'the least where one is no offer',
      supply,
      [{ power_W: 60, offer }, { power_W: 40 }],
      100,
      40,
      Number.POSITIVE_INFINITY,
    ],
    ['what a battery holds at what is drawn', battery(), [{ power_W: 60, store }], 30, 60, most(30)],
    ['what it holds at the most that it gives', battery(), [{ power_W: 60, store }], 100, 60, most(60)],
  ])('%s', (_, source, feeds, most_W, power_W, energy_Wh) =>
    expect(budgetOf(source, feeds, most_W)).toEqual({ power_W, energy_Wh }),
  )

  test('a battery holds less at a higher draw', () => expect(most(60)).toBeLessThan(most(30)))

  test('only a charger whose window it lies in is fed', () => {
    const feeds = feedsOf(supply, [charger, { ...charger, minInput_V: 13 }], { house: {} })
    expect(feeds.map(feed => feed?.power_W)).toEqual([60, undefined])
  })

  test('behind a lead it is less of its volts, and of a battery less of what it holds', () => {
    const lead = { resistance_ohm: 0.4, most_A: 50 }
    const given = (source: FieldSource) => {
      const [bare = [], behind = []] = [undefined, lead].map(one =>
        feedsOf(source, [charger], { house: {}, lead: one }),
      )
      return [bare, behind].map(feeds =>
        budgetOf(
          source,
          feeds.filter(feed => feed !== undefined),
          30,
        ),
      )
    }
    // 5 A over 0.4 ohm are 2 V of the 12.
    expect(given(supply).map(({ power_W }) => power_W)).toEqual([60, 50])
    const [bare, behind] = given(battery())
    expect(behind?.energy_Wh).toBeLessThan(0.97 * (bare?.energy_Wh ?? 0))
  })

  test('a session counts it: what three packs take at once over it takes longer', () => {
    const weak: Source = { kind: 'supply', offers: [{ voltage_V: 12, current_A: 4 }] }
    const on = (lead?: FieldSession['lead']) =>
      planOf({ packs: three, chargers: [charger, charger, charger], sources: [{ source: weak }], lead })
    expect(on({ resistance_ohm: 0.8, most_A: 50 }).wait_min).toBeGreaterThan(1.1 * on().wait_min)
    expect(on({ resistance_ohm: 0.8, most_A: 50 }).sources[0]?.most_W).toBeCloseTo(12 * 4 - 16 * 0.8, 9)
  })

  test('stop at the highest floor: under load, or at rest behind the wires of a car', () => {
    const low = { power_W: 60, store: { ...store, loadFloor_V: 10, restFloor_V: 11 } }
    const high = { power_W: 60, store: { ...store, loadFloor_V: 12, restFloor_V: 13 } }
    const wired = { power_W: 60, store: { ...low.store, leads_ohm: 0.1 } }
    expect(stopOf([low, { power_W: 60 }, high])).toEqual({ volts: 12, at: 'load' })
    expect(stopOf([wired, high])).toEqual({ volts: 13, at: 'rest' })
    expect(stopOf([{ power_W: 60 }])).toBeUndefined()
  })
})
