// A planned session exceeds no limit of a pack, overlaps no charges on a port, overloads no source and drains none below its floor.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/charging/envelope/judge.ts'
import type { FieldPlan, FieldSession, PlannedCharge } from '../../../src/charging/plan/field.ts'
import { planField } from '../../../src/charging/plan/plan.ts'
import { type Draw, drain } from '../../../src/charging/simulation/drain.ts'
import { simulateCharge } from '../../../src/charging/simulation/simulate.ts'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { batteryStore } from '../../../src/charging/things/battery-store.ts'
import type { Charger, CurrentSteps } from '../../../src/charging/things/charger.ts'
import { startOf } from '../../../src/charging/things/level.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import type { Source } from '../../../src/charging/things/source.ts'
import {
  someCharger,
  someChemistry,
  someHouse,
  somePack,
  someSource,
  someTemperature_C,
} from '../../support/arbitraries.ts'
import { cases, partOf } from '../../support/cases.ts'
import { designOf } from '../../support/design.ts'

const share = fc.double({ min: 0, max: 1, noNaN: true })
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })

/** Mostly what a pilot brings, sometimes anything. */
const mostly = <T>(usual: fc.Arbitrary<T>, any: fc.Arbitrary<T>) =>
  fc.oneof({ weight: 5, arbitrary: usual }, { weight: 1, arbitrary: any })

const usualPack: fc.Arbitrary<Pack> = fc.record({
  chemistry: someChemistry,
  series: fc.integer({ min: 1, max: 6 }),
  parallel: fc.constant(1),
  capacity_Ah: between(0.3, 3),
})
const steps: fc.Arbitrary<CurrentSteps> = fc.constantFrom<CurrentSteps>(
  { kind: 'list', steps_A: [0.3, 0.5, 1, 2, 4] },
  { kind: 'range', from_A: 0.1, to_A: 6, increment_A: 0.1 },
)
const usualCharger: fc.Arbitrary<Charger> = fc.record({ currents: steps, power_W: between(30, 200) })
const usualBattery: fc.Arbitrary<Source> = fc
  .record({ chemistry: someChemistry, series: fc.integer({ min: 3, max: 6 }), capacity_Ah: between(2, 10) })
  .map(pack => ({ kind: 'battery' as const, pack: { ...pack, parallel: 1 } }))

const rest = (perCell_V: number) => ({ kind: 'rest' as const, perCell_V })

const someGroup = fc
  .tuple(
    fc.record({
      pack: mostly(usualPack, somePack),
      count: fc.integer({ min: 1, max: 3 }),
      from: fc.oneof(
        share.map(soc => ({ kind: 'soc' as const, soc })),
        mostly(between(3.2, 3.8), between(1.5, 4.5)).map(rest),
      ),
    }),
    mostly<readonly Danger[] | undefined>(
      fc.constant(undefined),
      fc.constantFrom<readonly Danger[]>(['swollen'], ['pierced', 'wet'], ['keptApart', 'crashed']),
    ),
  )
  .map(([group, dangers]) => ({ ...group, dangers }))

const someField: fc.Arbitrary<FieldSession> = fc
  .tuple(
    fc.record({
      packs: fc.array(someGroup, { minLength: 1, maxLength: 4 }),
      chargers: fc.array(mostly(usualCharger, someCharger), { minLength: 1, maxLength: 3 }),
      sources: fc.array(
        fc.record({ source: fc.oneof(usualBattery, someSource), soc: mostly(between(0.5, 1), share) }),
        { maxLength: 2 },
      ),
      around: mostly(fc.constant({}), someHouse).map(house => ({ house, dangers: [], doubts: [] })),
    }),
    fc.record(
      {
        readyBy_s: fc.integer({ min: 600, max: 20_000 }),
        flights: fc.integer({ min: 1, max: 8 }),
        temperature_C: mostly(between(5, 40), someTemperature_C),
      },
      { requiredKeys: [] },
    ),
  )
  .map(([field, wishes]) => ({ ...field, ...wishes }))

type Check = (plan: FieldPlan, field: FieldSession) => void

/** Runs `check` on plans of random sessions, most of which charge something. */
function onPlans(count: number, check: Check): void {
  let charging = 0
  fc.assert(
    fc.property(someField, field => {
      const plan = planField(field)
      if (plan.charges.length > 0) charging++
      check(plan, field)
    }),
    cases(count),
  )
  expect(charging).toBeGreaterThan(partOf(count / 4))
}

/** Most power that a source has by its own numbers, in W. */
function power_W(source: Source): number {
  switch (source.kind) {
    case 'battery':
      return 2 * source.pack.capacity_Ah * source.pack.series * designOf(source.pack.chemistry).full_V
    case 'vehicle outlet':
      return 0.8 * source.fuse_A * 30
    case 'watts':
      return { supply: 1, mains: 0.8 * 0.9, panel: 0.7 * 0.8 }[source.of] * source.power_W
    case 'supply':
      return Math.max(...source.offers.map(({ voltage_V, current_A }) => voltage_V * current_A))
    case 'power bank':
      return source.offers ? Math.max(...source.offers.map(({ voltage_V, current_A }) => voltage_V * current_A)) : 7.5
  }
}

const input_W = ({ setting }: PlannedCharge): number => (setting.cutoffPack_V * setting.current_A) / setting.efficiency

const accountsForEveryPack: Check = ({ charges, fullAlready, left }, { packs }) => {
  packs.forEach(({ count, dangers }, group) => {
    const numbers = charges.filter(charge => charge.group === group).map(({ number }) => number)
    expect(new Set(numbers).size).toBe(numbers.length)
    const out = left.filter(each => each.group === group).reduce((sum, each) => sum + each.count, 0)
    expect(numbers.length + (fullAlready[group] as number) + out).toBe(count)
    if (dangers) expect(out).toBe(count)
  })
}

const keepsPortsAndTime: Check = ({ charges, ready, fullAlready }, { chargers, readyBy_s, flights }) => {
  for (const port of chargers.keys()) {
    const onPort = charges.filter(charge => charge.port === port).sort((a, b) => a.start_s - b.start_s)
    onPort.slice(1).forEach((next, index) => {
      expect(next.start_s).toBeGreaterThanOrEqual((onPort[index] as PlannedCharge).end_s)
    })
  }
  for (const { start_s, end_s } of charges) {
    expect(end_s).toBeGreaterThan(start_s)
    expect(end_s).toBeLessThanOrEqual(readyBy_s ?? Number.POSITIVE_INFINITY)
  }
  const full = fullAlready.reduce((sum, count) => sum + count, 0)
  expect(ready).toBe(charges.length + full)
  if (flights !== undefined) expect(charges.length).toBeLessThanOrEqual(Math.max(0, flights - full))
}

const keepsLimits: Check = ({ charges }, { packs, chargers, around: { house: limits }, temperature_C = 25 }) => {
  for (const { group, port, setting } of charges) {
    const { pack, from } = packs[group] as FieldSession['packs'][number]
    const charger = chargers[port] as FieldSession['chargers'][number]
    const { highestRate_C, damage_V } = pack.chemistry
    const rate_C = Math.min(
      highestRate_C.value,
      pack.labelRate_C ?? Number.POSITIVE_INFINITY,
      limits.maxRate_C?.[pack.chemistry.name] ?? Number.POSITIVE_INFINITY,
    )
    expect(setting.current_A).toBeLessThanOrEqual(rate_C * pack.capacity_Ah * (1 + 1e-9))
    expect(setting.cutoff.perCell_V).toBeLessThanOrEqual(designOf(pack.chemistry).full_V)
    expect(setting.current_A * setting.cutoffPack_V).toBeLessThanOrEqual(
      (charger.power_W ?? Number.POSITIVE_INFINITY) * (1 + 1e-9),
    )
    if (from?.kind === 'rest') expect(from.perCell_V).toBeGreaterThanOrEqual(damage_V.value)
    expect(temperature_C).toBeGreaterThanOrEqual(0)
    expect(temperature_C).toBeLessThanOrEqual(45)
  }
}

/** What is planned is permitted, by itself and as it is set. */
const isPermitted: Check = ({ charges, left, fullAlready }, { packs }) => {
  for (const { permit, setting, start_s, end_s } of charges) {
    const { verdict, found } = judge(permit.situation, {
      set_A: setting.current_A,
      input_A: setting.input_A,
      takes_s: end_s - start_s,
    })
    expect([verdict, found.filter(({ weight }) => weight === 'refuse')]).not.toContain('do not charge')
  }
  for (const { why } of left) {
    if (why.kind === 'never' || why.kind === 'nowhere') expect(why.found.weight).toBe('refuse')
  }
  expect(fullAlready).toHaveLength(packs.length)
}

const keepsSourcePower: Check = ({ charges, sources: uses }, { sources }) => {
  sources.forEach(({ source }, index) => {
    const onIt = charges.filter(charge => charge.source === index)
    for (const { start_s } of onIt) {
      const at = onIt.filter(charge => charge.start_s <= start_s && start_s < charge.end_s)
      const drawn_W = at.reduce((sum, charge) => sum + input_W(charge), 0)
      const { most_W } = uses[index] as FieldPlan['sources'][number]
      expect(drawn_W).toBeLessThanOrEqual(most_W * (1 + 1e-6))
      expect(drawn_W).toBeLessThanOrEqual(power_W(source) * (1 + 1e-6))
    }
  })
}

describe('a planned session', () => {
  it('accounts for every pack, keeps ports and the time, exceeds no limit and overloads no source', () => {
    onPlans(1000, (plan, field) => {
      accountsForEveryPack(plan, field)
      keepsPortsAndTime(plan, field)
      keepsLimits(plan, field)
      isPermitted(plan, field)
      keepsSourcePower(plan, field)
    })
  })

  it('takes no battery below its floor, with every charge simulated and drawn from it in parallel', () => {
    let followed = 0
    onPlans(300, ({ charges }, { packs, sources, around: { house: limits }, temperature_C }) => {
      sources.forEach(({ source, soc }, index) => {
        const onIt = charges.filter(charge => charge.source === index)
        if (source.kind !== 'battery' || onIt.length === 0) return
        followed++
        const store = batteryStore(source.pack, limits, soc ?? 1)
        const draws = drawsTogether(onIt, packs, temperature_C)
        const { completed, lowest_V } = drain({ ...store, loadFloor_V: 0, restFloor_V: 0 }, store.soc, draws)
        const floor_V = Math.max(
          designOf(source.pack.chemistry).loadFloor_V,
          limits.sourceFloorPerCell_V?.[source.pack.chemistry.name] ?? 0,
        )
        expect(completed).toBe(true)
        expect(lowest_V).toBeGreaterThanOrEqual(floor_V * source.pack.series)
      })
    })
    expect(followed).toBeGreaterThan(partOf(10))
  })
})

const span_s = 20

/** The power of all charges together, span by span: each simulated as the plan set it, from a minute after it is connected. */
function drawsTogether(charges: readonly PlannedCharge[], packs: FieldSession['packs'], temperature_C = 25): Draw[] {
  const powers = charges.map(({ group, setting, start_s }) => {
    const { pack, from } = packs[group] as FieldSession['packs'][number]
    const { curve } = simulateCharge({
      pack,
      from: startOf(from ?? { kind: 'named', name: 'empty' }, pack.chemistry, {}),
      current_A: setting.current_A,
      target: { kind: 'voltage', perCell_V: setting.cutoff.perCell_V },
      temperature_C,
    })
    return (time_s: number) => {
      const since_s = time_s - start_s - 60
      const point = curve.findLast(at => at.time_s <= since_s)
      const over = since_s > (curve.at(-1)?.time_s ?? 0)
      return point && !over ? (point.perCell_V * pack.series * point.current_A) / setting.efficiency : 0
    }
  })
  const end_s = Math.max(...charges.map(charge => charge.end_s))
  return Array.from({ length: Math.ceil(end_s / span_s) }, (_, index) => ({
    power_W: powers.reduce((sum, power) => sum + power(index * span_s), 0),
    duration_s: span_s,
  }))
}
