// No board joins what must not be joined, no lent pack goes below its floor, no hurt cell is passed as fit.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/charging/envelope/judge.ts'
import { settingFor } from '../../../src/charging/setting/setting.ts'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import { type BesidePack, situationOf } from '../../../src/charging/situation/situation.ts'
import { lend } from '../../../src/charging/sources/lend.ts'
import { batteryStore } from '../../../src/charging/things/battery-store.ts'
import { restingVoltage } from '../../../src/charging/things/curve.ts'
import type { HouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Level } from '../../../src/charging/things/level.ts'
import { readingFault } from '../../../src/charging/upkeep/cell-spread.ts'
import { boardOf, boardTold } from '../../../src/charging/upkeep/parallel.ts'
import { someCharger, someChemistry, someHouse, somePack } from '../../support/arbitraries.ts'
import { cases, partOf } from '../../support/cases.ts'
import { designOf } from '../../support/design.ts'
import { judged } from '../../support/judged.ts'

const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
/** Spread evenly, where `between` is drawn to its ends. */
const hundredths = (min: number, max: number) => fc.integer({ min, max }).map(value => value / 100)
const rest = (perCell_V: number) => ({ kind: 'rest' as const, perCell_V })
const someBoardPack: fc.Arbitrary<BesidePack> = fc.record(
  {
    pack: somePack,
    from: fc.oneof(between(1, 4.6).map(rest), between(3.7, 3.9).map(rest)),
    dangers: fc.constant<Danger[]>(['swollen']),
  },
  { requiredKeys: ['pack', 'from'] },
)

/** The board as it would be answered: judged as told, and where it is permitted as it would be done. */
function boardJudged(packs: readonly BesidePack[], house: HouseLimits = {}) {
  const told = boardTold(packs as [BesidePack], undefined, house)
  const first = judge(situationOf(told, { house, dangers: [], doubts: [] }))
  if (!first.permit) return { refused: true, flows: [] }
  const { flows, flowShare } = boardOf(first.permit)
  const { verdict } = judge(first.permit.situation, { flowShare })
  return { refused: verdict === 'do not charge', flows }
}

describe('a parallel board', () => {
  it('refuses mixed cell counts, mixed chemistries, unsound packs and damaged cells, always', () => {
    fc.assert(
      fc.property(fc.array(someBoardPack, { minLength: 2, maxLength: 4 }), someHouse, (packs, house) => {
        const { refused } = boardJudged(packs, house)
        const mixed = new Set(packs.map(({ pack }) => `${pack.series} ${pack.chemistry.name}`)).size > 1
        const unfit = packs.some(
          ({ pack, from, dangers }) =>
            dangers !== undefined || (from?.kind === 'rest' && from.perCell_V < pack.chemistry.precharge_V.value),
        )
        if (mixed || unfit) expect(refused).toBe(true)
      }),
      cases(2000),
    )
  })

  it('judges packs in percent like the same ones in volts', () => {
    fc.assert(
      fc.property(someChemistry, fc.array(between(0, 1), { minLength: 2, maxLength: 3 }), (chemistry, socs) => {
        const pack = { chemistry, series: 3, parallel: 1, capacity_Ah: 1 }
        const verdictOf = (froms: readonly Level[]) => boardJudged(froms.map(from => ({ pack, from }))).refused
        const inPercent = verdictOf(socs.map(soc => ({ kind: 'soc', soc })))
        expect(inPercent).toBe(verdictOf(socs.map(soc => rest(restingVoltage(chemistry, soc)))))
      }),
      cases(300),
    )
  })

  it('joins none that lie more than 0.1 V per cell apart, and lets none take more than it may', () => {
    let joined = 0
    const alike = fc
      .tuple(
        someChemistry,
        fc.integer({ min: 1, max: 6 }),
        fc.array(fc.tuple(between(0.2, 5), between(0.1, 1)), { minLength: 2, maxLength: 4 }),
      )
      .map(([chemistry, series, parts]) =>
        parts.map(([capacity_Ah, soc]) => ({
          pack: { chemistry, series, parallel: 1, capacity_Ah },
          from: rest(restingVoltage(chemistry, 0.5 + soc / 10)),
        })),
      )
    fc.assert(
      fc.property(alike, packs => {
        const { refused, flows } = boardJudged(packs)
        if (refused) return
        joined++
        const volts = packs.map(({ from }) => from.perCell_V)
        expect(Math.max(...volts) - Math.min(...volts)).toBeLessThanOrEqual(0.1 + 1e-6)
        flows.forEach(({ firstMinute_A }, index) => {
          const { pack } = packs[index] as (typeof packs)[number]
          const { value: highest_C } = pack.chemistry.highestRate_C
          if (firstMinute_A > 0) expect(firstMinute_A).toBeLessThanOrEqual(highest_C * pack.capacity_Ah * (1 + 1e-9))
        })
      }),
      cases(500),
    )
    expect(joined).toBeGreaterThan(partOf(50))
  })

  it('sets a current that the others may take when the largest pack comes unplugged', () => {
    let permitted = 0
    fc.assert(
      fc.property(
        fc.array(somePack, { minLength: 2, maxLength: 5 }),
        fc.option(someCharger, { nil: undefined }),
        someHouse,
        (packs, charger, house) => {
          const [first] = packs as [(typeof packs)[0]]
          const alike = packs.map(pack => ({ ...pack, series: first.series, chemistry: first.chemistry }))
          const halfFull = alike.map(pack => ({ pack, from: { kind: 'soc' as const, soc: 0.5 } }))
          const told = boardTold(halfFull as unknown as [BesidePack], charger, house)
          const { permit } = judge(situationOf(told, { house, dangers: [], doubts: [] }))
          if (!permit) return
          const setting = settingFor(permit)
          permitted++
          const sizes_Ah = alike.map(({ capacity_Ah }) => capacity_Ah)
          const left_Ah = sizes_Ah.reduce((sum, size) => sum + size, 0) - Math.max(...sizes_Ah)
          const highest_C = first.chemistry.highestRate_C.value
          for (const { labelRate_C = highest_C } of alike) {
            expect(setting.current_A).toBeLessThanOrEqual(Math.min(labelRate_C, highest_C) * left_Ah * (1 + 1e-9))
          }
        },
      ),
      cases(10_000),
    )
    expect(permitted).toBeGreaterThan(partOf(1000))
  })
})

describe('lending', () => {
  it('never plans a pack below its floor', () => {
    let lent = 0
    // Mostly without a measured resistance, which makes many random packs unable to give anything.
    const lendable = fc.oneof(
      somePack,
      somePack.map(({ cellResistance_ohm: _, ...pack }) => pack),
    )
    fc.assert(
      fc.property(lendable, hundredths(0, 100), hundredths(2, 200), someHouse, (pack, soc, rate_C, limits) => {
        const power_W = rate_C * pack.capacity_Ah * pack.series * 3
        const { permit } = judged({ act: 'drain', pack, from: { kind: 'soc', soc } }, limits)
        const lending = permit && lend(permit, { power_W })
        if (!lending || lending.given_Wh === 0) return
        lent++
        const store = batteryStore(pack, limits, soc)
        const rest_V = store.rest_V(lending.leftSoc)
        const drawn_W = power_W / lending.efficiency
        const out_A =
          (rest_V - Math.sqrt(rest_V ** 2 - 4 * store.resistance_ohm * drawn_W)) / (2 * store.resistance_ohm)
        const floor_V = designOf(pack.chemistry).loadFloor_V * pack.series
        expect(rest_V - out_A * store.resistance_ohm).toBeGreaterThanOrEqual(floor_V - 1e-9)
        const restFloor_V = designOf(pack.chemistry).restFloor_V * pack.series
        expect(rest_V).toBeGreaterThanOrEqual(restFloor_V - 1e-9)
      }),
      cases(3000),
    )
    expect(lent).toBeGreaterThan(partOf(1000))
  })
})

describe('cell readings', () => {
  it('never pass a cell below its damage threshold or above full, or another number of cells than the label has', () => {
    const readings = fc.array(fc.oneof(between(0, 5), between(3.6, 4.1)), { minLength: 1, maxLength: 14 })
    fc.assert(
      fc.property(somePack, readings, fc.constantFrom('rest', 'full'), (pack, cells_V, when) => {
        const { damage_V, full_V } = pack.chemistry
        const hurt = cells_V.some(cell_V => cell_V < damage_V.value || cell_V > full_V.value)
        const told = { act: 'look' as const, pack, cells_V, when }
        const { verdict } = judge(situationOf(told, { house: {}, dangers: [], doubts: [] }))
        if (hurt) expect(verdict).toBe('do not charge')
        if (cells_V.length !== pack.series) expect(readingFault(pack, cells_V)).toBeDefined()
      }),
      cases(10_000),
    )
  })
})
