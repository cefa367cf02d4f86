// A source battery is never planned below its floor, the count is rounded down, and the energies add up.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { CurvePoint } from '../../../src/charging/simulation/charge.ts'
import { type Draw, drain } from '../../../src/charging/simulation/drain.ts'
import { countedPacks, drawsOf } from '../../../src/charging/simulation/supply-run.ts'
import { planSource, type SourcePlan } from '../../../src/charging/sources/source-plan.ts'
import { type BatteryStore, batteryStore, starterStore } from '../../../src/charging/things/battery-store.ts'
import { type HouseLimits, noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { State } from '../../../src/charging/things/level.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import type { Source } from '../../../src/charging/things/source.ts'
import { someBattery, someChemistry, someHouse, someSource } from '../../support/arbitraries.ts'
import { cases, partOf } from '../../support/cases.ts'
import { designOf } from '../../support/design.ts'
import { judged } from '../../support/judged.ts'

interface PlanRequest {
  readonly pack: Pack
  readonly source: Source
  readonly sourceSoc: number
  readonly from: State
  readonly limits?: HouseLimits
  readonly count?: number
}

/** The plan, where the envelope permits the charge. */
function planOf({ limits, count, ...told }: PlanRequest): SourcePlan | undefined {
  const { permit } = judged({ act: 'charge', ...told }, limits)
  return permit && planSource(permit, count)
}

const share = fc.double({ min: 0, max: 1, noNaN: true })
/** A source that somebody would use. */
const charged = fc.double({ min: 0.4, max: 1, noNaN: true })

const someDraws: fc.Arbitrary<Draw[]> = fc.array(
  fc.record({
    power_W: fc.double({ min: 0, max: 300, noNaN: true }),
    duration_s: fc.double({ min: 0, max: 3600, noNaN: true }),
  }),
  { maxLength: 8 },
)

/** A pack small enough beside `source_Wh` that a plan holds a few of them, and not hundreds. */
const packsFor = (source_Wh: number): fc.Arbitrary<Pack> =>
  fc
    .record({
      chemistry: someChemistry,
      series: fc.integer({ min: 1, max: 6 }),
      share: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
    })
    .map(({ chemistry, series, share }) => ({
      chemistry,
      series,
      parallel: 1,
      capacity_Ah: Math.min(60, Math.max(0.02, (source_Wh * share) / (3.7 * series))),
    }))

const nominal_Wh = (source: Source): number => {
  if (source.kind === 'battery') return source.pack.series * source.pack.capacity_Ah * 3.7
  return source.kind === 'power bank' ? source.label_Wh : 300
}

const planFor = (sources: fc.Arbitrary<Source>) =>
  sources.chain(source =>
    fc
      .tuple(
        fc.record({ source: fc.constant(source), pack: packsFor(nominal_Wh(source)), sourceSoc: charged }),
        share.map(soc => ({ from: { kind: 'soc' as const, soc: soc * 0.9 } })),
        fc.record({ limits: someHouse, count: fc.integer({ min: 1, max: 6 }) }, { requiredKeys: [] }),
      )
      .map(([known, from, rest]) => ({ ...known, ...from, ...rest }) as PlanRequest),
  )

function onEveryPlan(
  sources: fc.Arbitrary<Source>,
  count: number,
  check: (plan: SourcePlan, request: PlanRequest) => void,
): void {
  let planned = 0
  fc.assert(
    fc.property(planFor(sources), request => {
      const plan = planOf(request)
      if (!plan) return
      planned++
      check(plan, request)
    }),
    cases(count),
  )
  expect(planned).toBeGreaterThan(partOf(count / 4))
}

/** Within a thousandth of the whole; exact where both are nothing. */
const closes = (value: number, expected: number, whole: number) =>
  expect(Math.abs(value - expected)).toBeLessThanOrEqual(1e-3 * whole + 1e-9)

describe('drain', () => {
  const check = (store: BatteryStore, soc: number, draws: Draw[]) => {
    const { lowest_V, soc: end, delivered_Wh, loss_Wh, completed } = drain(store, soc, draws)
    expect(lowest_V).toBeGreaterThanOrEqual(store.loadFloor_V)
    expect(end).toBeLessThanOrEqual(soc)
    if (end < soc) expect(store.rest_V(end)).toBeGreaterThanOrEqual(store.restFloor_V)
    const asked_Wh = draws.reduce((sum, { power_W, duration_s }) => sum + (power_W * duration_s) / 3600, 0)
    if (completed) closes(delivered_Wh, asked_Wh, asked_Wh)
    // What has left the store by its own voltage curve is what was delivered and what was lost.
    const out_Wh = store.energyBetween_Wh(end, soc)
    closes(delivered_Wh + loss_Wh, out_Wh, out_Wh)
  }

  it('stops a lithium battery above its floor under load, and loses no energy unseen', () => {
    fc.assert(
      fc.property(someBattery, someHouse, share, someDraws, (source, house, soc, draws) => {
        if (source.kind !== 'battery') return
        const store = batteryStore(source.pack, house, soc)
        const perCell_V = Math.max(
          designOf(source.pack.chemistry).loadFloor_V,
          house.sourceFloorPerCell_V?.[source.pack.chemistry.name] ?? 0,
        )
        expect(store.loadFloor_V).toBeCloseTo(perCell_V * source.pack.series, 9)
        expect(store.restFloor_V).toBeGreaterThanOrEqual(
          designOf(source.pack.chemistry).restFloor_V * source.pack.series - 1e-9,
        )
        check(store, soc, draws)
      }),
      cases(10_000),
    )
  })

  it('leaves a starter battery above half charge, and takes no more than a fifth of its label', () => {
    fc.assert(
      fc.property(fc.double({ min: 11.5, max: 13, noNaN: true }), someDraws, (rest_V, draws) => {
        const store = starterStore({ kind: 'vehicle outlet', fuse_A: 10, engine: 'off', rest_V })
        check(store, store.soc, draws)
        const { soc } = drain(store, store.soc, draws)
        if (soc === store.soc) return
        expect(soc).toBeGreaterThan(0.5)
        expect(store.soc - soc).toBeLessThanOrEqual(0.2 + 1e-9)
      }),
      cases(10_000),
    )
  })
})

/** Drains the battery second by second, as a check on the longer steps of the plan: its lowest voltage, in V. */
function lowestBySeconds_V({ each, planned, setting }: SourcePlan, pack: Pack, store: BatteryStore): number {
  let soc = store.soc
  let lowest_V = Number.POSITIVE_INFINITY
  const { curve } = each.charge
  for (let done = 0; done < planned; done++) {
    for (let i = 1; i < curve.length; i++) {
      const [from, to] = [curve[i - 1] as CurvePoint, curve[i] as CurvePoint]
      const mean_W = (from.perCell_V * from.current_A + to.perCell_V * to.current_A) / 2
      const input_W = (mean_W * pack.series) / setting.efficiency
      const steps = Math.max(1, Math.ceil(to.time_s - from.time_s))
      for (let step = 0; step < steps; step++) {
        const rest_V = store.rest_V(soc)
        const drawn_A =
          (rest_V - Math.sqrt(rest_V ** 2 - 4 * store.resistance_ohm * input_W)) / (2 * store.resistance_ohm)
        soc -= (drawn_A * (to.time_s - from.time_s)) / steps / 3600 / store.capacity_Ah
        lowest_V = Math.min(lowest_V, rest_V - drawn_A * store.resistance_ohm)
      }
    }
  }
  return lowest_V
}

describe('planSource', () => {
  it('never takes a battery below its floor, followed second by second', () => {
    const fiveMillivolts_V = 0.005
    onEveryPlan(someBattery, 150, (plan, { pack, source, limits = noHouseLimits, sourceSoc = 1 }) => {
      if (source.kind !== 'battery') return
      const { series, chemistry } = source.pack
      const perCell_V = Math.max(designOf(chemistry).loadFloor_V, limits.sourceFloorPerCell_V?.[chemistry.name] ?? 0)
      const lowest_V = lowestBySeconds_V(plan, pack, batteryStore(source.pack, limits, sourceSoc))
      expect(lowest_V / series).toBeGreaterThanOrEqual(perCell_V - fiveMillivolts_V)
    })
  })

  it('calls no more packs sure than a charger that passes on 80 % leaves above the floors, loaded and at rest', () => {
    let oneOnly = 0
    onEveryPlan(someBattery, 1_000, ({ between, each, most, setting }, { pack }) => {
      const store = setting.feed?.store
      if (!store || !between || between.low >= countedPacks) return
      if (most === 1) oneOnly++
      const draws = drawsOf(each.charge, pack.series, 0.8)
      const run = drain(store, store.soc, Array.from({ length: between.low }, () => draws).flat())
      expect(run.completed).toBe(true)
      expect(run.lowest_V).toBeGreaterThanOrEqual(store.loadFloor_V)
    })
    expect(oneOnly).toBeGreaterThan(partOf(20))
  })

  it('leaves a battery above its floor and balances: source out is packs in, converter loss and own loss', () => {
    onEveryPlan(someSource, 10_000, ({ balance, each, planned, leftSoc, setting }, request) => {
      const { sourceOut_Wh, intoPacks_Wh, converterLoss_Wh, sourceLoss_Wh } = balance
      closes(intoPacks_Wh + converterLoss_Wh + sourceLoss_Wh, sourceOut_Wh, sourceOut_Wh)
      closes(intoPacks_Wh, planned * each.charge.energy_Wh, sourceOut_Wh)
      closes(converterLoss_Wh, intoPacks_Wh * (1 / setting.efficiency - 1), sourceOut_Wh)
      const store = setting.feed?.store
      if (store) {
        closes(store.energyBetween_Wh(leftSoc ?? 0, store.soc), sourceOut_Wh, sourceOut_Wh)
        const floor_V = Math.max(store.loadFloor_V, store.restFloor_V)
        if (planned > 0) expect(store.rest_V(leftSoc ?? 0)).toBeGreaterThanOrEqual(floor_V)
      }
      expect(leftSoc ?? 0).toBeGreaterThanOrEqual(-1e-9)
      if (request.source.kind === 'power bank') {
        closes(request.source.label_Wh * (request.sourceSoc - (leftSoc ?? 0)), sourceOut_Wh, sourceOut_Wh)
      }
    })
  })

  it('rounds the count down: one more pack than the most is not carried', () => {
    onEveryPlan(someSource, 1_000, ({ most, planned, enough }, request) => {
      expect(planned).toBeLessThanOrEqual(request.count ?? Number.POSITIVE_INFINITY)
      if (most === undefined) return
      expect(planned).toBeLessThanOrEqual(most)
      if (request.count !== undefined) expect(enough).toBe(most >= request.count)
      expect(planOf({ ...request, count: most + 1 })?.enough).toBe(false)
    })
  })
})
