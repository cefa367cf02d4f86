// Random situations, over all that the notation reads and beyond what is wise.

import fc from 'fast-check'
import { type Danger, dangers } from '../../src/charging/situation/dangers.ts'
import { type Doubt, doubts } from '../../src/charging/situation/doubts.ts'
import type { Act, Planned, Situation } from '../../src/charging/situation/situation.ts'
import type { Level } from '../../src/charging/things/level.ts'
import { someCharger, someHouse, somePack, someRest_V, someSource, someTemperature_C } from './arbitraries.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const perhaps = <T>(some: fc.Arbitrary<T>) => fc.option(some, { nil: undefined })

export const allDangers = Object.keys(dangers) as Danger[]
export const allDoubts = Object.keys(doubts) as Doubt[]

export const someLevel: fc.Arbitrary<Level> = fc.oneof(
  someRest_V.map(perCell_V => ({ kind: 'rest' as const, perCell_V })),
  between(0, 1).map(soc => ({ kind: 'soc' as const, soc })),
  fc.constantFrom('full', 'storage', 'empty').map(name => ({ kind: 'named' as const, name })),
)

const someGoal: fc.Arbitrary<Level> = someLevel.filter(level => level.kind !== 'named' || level.name !== 'empty')

const told = {
  pack: somePack,
  from: perhaps(someLevel),
  to: perhaps(someGoal),
  charger: perhaps(someCharger),
  source: perhaps(someSource),
  sourceSoc: perhaps(between(0, 1)),
  current_A: perhaps(between(0.01, 60)),
  temperature_C: perhaps(someTemperature_C),
  balanceLead: perhaps(fc.boolean()),
  house: someHouse,
}

/** Of one battery, with no danger told. */
export const someSituation = (...acts: Act[]) =>
  fc.record({
    ...told,
    act: fc.constantFrom(...acts),
    cells_V: fc.constant(undefined),
    dangers: fc.constant([] as readonly Danger[]),
    doubts: fc.constant([] as readonly Doubt[]),
  }) satisfies fc.Arbitrary<Situation>

export const someBoard: fc.Arbitrary<Situation> = fc
  .tuple(
    someSituation('board'),
    fc.array(fc.record({ pack: somePack, from: perhaps(someLevel) }), { minLength: 1, maxLength: 6 }),
    fc.boolean(),
  )
  .map(([situation, packs, alike]) => ({
    ...situation,
    board: alike ? packs.map(one => ({ ...one, pack: situation.pack })) : packs,
  }))

export const somePlanned: fc.Arbitrary<Planned> = fc.record({
  set_A: perhaps(between(0.01, 60)),
  takes_s: perhaps(between(0, 200_000)),
  lasts_s: perhaps(between(0, 200_000)),
  input_A: perhaps(between(0, 40)),
  warmest_C: perhaps(between(-10, 70)),
  carried: perhaps(fc.integer({ min: 0, max: 20 })),
  wanted: perhaps(fc.integer({ min: 0, max: 20 })),
  flowShare: perhaps(between(0, 3)),
  energy_Wh: perhaps(between(0, 300)),
  agedTimes: perhaps(between(0.5, 5)),
  labelShare: perhaps(between(0.3, 1.2)),
  startShare: perhaps(between(0.3, 1.2)),
  putBackShare: perhaps(between(0, 1.5)),
  charged_A: perhaps(between(0.01, 60)),
})
