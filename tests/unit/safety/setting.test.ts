// What is never advised, whatever is asked: the limits are worked out here anew, by hand and from the request.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { type Setting, settingFor } from '../../../src/charging/setting/setting.ts'
import type { Told } from '../../../src/charging/situation/situation.ts'
import type { HouseLimits } from '../../../src/charging/things/house-limits.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import {
  someCharger,
  someHouse,
  somePack,
  someRest_V,
  someSource,
  someTemperature_C,
} from '../../support/arbitraries.ts'
import { cases, partOf } from '../../support/cases.ts'
import { designOf } from '../../support/design.ts'
import { judged, refusedBy } from '../../support/judged.ts'
import { someLevel } from '../../support/situations.ts'

/** Rounding errors of binary fractions, no more. */
const slack = 1 + 1e-9

type Request = Told & { readonly pack: Pack; readonly house: HouseLimits }

const someRequest = fc
  .tuple(
    fc.record({ pack: somePack, house: someHouse, act: fc.constant('charge' as const) }),
    fc.record(
      {
        charger: someCharger,
        source: someSource,
        to: someLevel.filter(level => level.kind !== 'named' || level.name !== 'empty'),
        temperature_C: someTemperature_C,
        balanceLead: fc.boolean(),
        from: someRest_V.map(perCell_V => ({ kind: 'rest' as const, perCell_V })),
      },
      { requiredKeys: [] },
    ),
  )
  .map(([pack, rest]) => ({ ...pack, ...rest }) as Request)

const judgedIn = ({ house, ...told }: Request) => judged(told, house)

/** Runs `check` on every advised setting, and makes sure that enough of the cases were advised at all. */
function onEverySetting(check: (setting: Setting, request: Request) => void): void {
  let advised = 0
  fc.assert(
    fc.property(someRequest, request => {
      const { permit } = judgedIn(request)
      if (!permit) return
      advised++
      check(settingFor(permit), request)
    }),
    cases(10_000),
  )
  expect(advised).toBeGreaterThan(partOf(500))
}

/** Power that the source gives for sure inside the charger's input window, in W. */
function sourcePower_W({ source, charger, house }: Request): number {
  const min_V = charger?.minInput_V ?? 0
  const max_V = charger?.maxInput_V ?? Number.POSITIVE_INFINITY
  if (!source) return Number.POSITIVE_INFINITY
  switch (source.kind) {
    case 'battery': {
      const { chemistry, series, capacity_Ah } = source.pack
      const perCell_V = Math.max(designOf(chemistry).loadFloor_V, house.sourceFloorPerCell_V?.[chemistry.name] ?? 0)
      return 2 * capacity_Ah * Math.max(perCell_V * series, min_V)
    }
    case 'vehicle outlet':
      return 0.8 * source.fuse_A * (source.engine === 'running' ? 13.5 : 12.65)
    case 'watts':
      return { supply: 1, mains: 0.8 * 0.9, panel: 0.7 * 0.8 }[source.of] * source.power_W
    default: {
      const offers = source.offers ?? [{ voltage_V: 5, current_A: 1.5 }]
      const inside = offers.filter(({ voltage_V }) => voltage_V >= min_V && voltage_V <= max_V)
      return Math.max(...inside.map(({ voltage_V, current_A }) => voltage_V * current_A))
    }
  }
}

describe('an advised current', () => {
  it('is never above the limit of the label, the chemistry or the house', () => {
    onEverySetting(({ current_A }, { pack, house }) => {
      const { capacity_Ah, chemistry, labelRate_C = Number.POSITIVE_INFINITY } = pack
      const house_C = house.maxRate_C?.[chemistry.name] ?? Number.POSITIVE_INFINITY
      expect(current_A).toBeGreaterThan(0)
      expect(current_A).toBeLessThanOrEqual(
        Math.min(labelRate_C, designOf(chemistry).highest_C, house_C) * capacity_Ah * slack,
      )
    })
  })

  it('is never above half the capacity an hour below 10 °C, nor a fifth below 5 °C', () => {
    onEverySetting(({ current_A }, { pack, temperature_C = 25 }) => {
      if (temperature_C > 10) return
      const most_C = temperature_C <= 5 ? 0.2 : 0.5
      expect(current_A).toBeLessThanOrEqual(most_C * pack.capacity_Ah * slack)
    })
  })

  it('is one that the charger has, within its power at the cutoff', () => {
    onEverySetting(({ current_A, cutoffPack_V }, { charger }) => {
      if (!charger) return
      const { currents, power_W = Number.POSITIVE_INFINITY } = charger
      if (currents.kind === 'list') expect(currents.steps_A).toContain(current_A)
      else {
        const index = (current_A - currents.from_A) / currents.increment_A
        expect(Math.abs(index - Math.round(index))).toBeLessThan(1e-4)
        expect(current_A).toBeGreaterThanOrEqual(currents.from_A / slack)
        expect(current_A).toBeLessThanOrEqual(currents.to_A * slack)
      }
      expect(current_A * cutoffPack_V).toBeLessThanOrEqual(power_W * slack)
    })
  })

  it('never asks more of the source than it gives for sure', () => {
    onEverySetting(({ current_A, cutoffPack_V, efficiency }, request) => {
      expect((current_A * cutoffPack_V) / efficiency).toBeLessThanOrEqual(sourcePower_W(request) * slack)
    })
  })

  it('without a charger is a hundredth of an ampere rounded down from the wanted one', () => {
    onEverySetting(({ current_A, wanted_A }, { charger }) => {
      if (charger) return
      expect(Math.abs(current_A * 100 - Math.round(current_A * 100))).toBeLessThan(1e-6)
      expect(current_A).toBeLessThanOrEqual(wanted_A * slack)
    })
  })
})

describe('an advised cutoff', () => {
  it('is never above full, nor above the gentle full of a house that wants it', () => {
    onEverySetting(({ cutoff, cutoffPack_V }, { pack, house }) => {
      const gentle = house.gentleLiIon && pack.chemistry.name === 'Li-ion'
      expect(cutoff.perCell_V).toBeLessThanOrEqual((gentle ? 4.1 : designOf(pack.chemistry).full_V) * slack)
      expect(cutoffPack_V).toBeLessThanOrEqual(designOf(pack.chemistry).full_V * pack.series * slack)
    })
  })

  it('is never above the target, and is one that the charger has', () => {
    onEverySetting(({ cutoff }, { to, charger }) => {
      if (to?.kind === 'rest') expect(cutoff.perCell_V).toBeLessThanOrEqual(to.perCell_V * slack)
      const nearest_V = Math.min(...(charger?.cutoffs_V ?? []).map(volts => Math.abs(volts - cutoff.perCell_V)))
      if (charger?.cutoffs_V) expect(nearest_V).toBeLessThan(1e-8)
    })
  })
})

describe('a charge is refused', () => {
  const refusedFor = ({ house, ...told }: Request) => refusedBy(told, house)

  it('below the damage threshold, always', () => {
    fc.assert(
      fc.property(someRequest, fc.double({ min: 0, max: 0.999999, noNaN: true }), (request, share) => {
        const perCell_V = designOf(request.pack.chemistry).damage_V * share
        expect(refusedFor({ ...request, from: { kind: 'rest', perCell_V } })).toContain('deadCell')
      }),
      cases(10_000),
    )
  })

  it('outside 0 to 45 °C, always', () => {
    const outside = fc.oneof(
      fc.double({ min: -50, max: -0.001, noNaN: true }),
      fc.double({ min: 45.001, max: 150, noNaN: true }),
    )
    fc.assert(
      fc.property(someRequest, outside, (request, temperature_C) => {
        expect(refusedFor({ ...request, temperature_C })).not.toEqual([])
      }),
      cases(10_000),
    )
  })

  it('to more than full, always', () => {
    fc.assert(
      fc.property(someRequest, fc.double({ min: 0.001, max: 3, noNaN: true }), (request, above_V) => {
        const perCell_V = designOf(request.pack.chemistry).full_V + above_V
        expect(refusedFor({ ...request, to: { kind: 'rest', perCell_V } })).not.toEqual([])
      }),
      cases(10_000),
    )
  })

  it('on a charger for other cell counts, or without the balance lead that it wants', () => {
    fc.assert(
      fc.property(someRequest, someCharger, (request, charger) => {
        const { series } = request.pack
        expect(refusedFor({ ...request, charger: { ...charger, minSeries: series + 1 } })).not.toEqual([])
        const strict = { ...charger, needsBalanceLead: true }
        expect(refusedFor({ ...request, charger: strict, balanceLead: false })).not.toEqual([])
      }),
      cases(10_000),
    )
  })
})
