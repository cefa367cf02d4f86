// What must hold of the envelope whatever is asked.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge, type Verdict } from '../../../src/charging/envelope/judge.ts'
import { hurriedSettingFor, type Setting, settingFor } from '../../../src/charging/setting/setting.ts'
import { timedCharge } from '../../../src/charging/setting/timed-charge.ts'
import type { Planned, Situation } from '../../../src/charging/situation/situation.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import { english } from '../../../src/ground/locale.ts'
import { linesOf } from '../../../src/handbook/rules/index.ts'
import { cases, partOf } from '../../support/cases.ts'
import { allDangers, allDoubts, someBoard, someLevel, somePlanned, someSituation } from '../../support/situations.ts'

const worse = (one: Verdict, other: Verdict): boolean => rank[one] >= rank[other]
const rank: Readonly<Record<Verdict, number>> = { go: 0, 'go with care': 1, 'do not charge': 2 }

const anySituation = fc.oneof(someSituation('charge', 'drain', 'store', 'carry', 'look'), someBoard) as fc.Arbitrary<
  Situation & { readonly pack: Pack }
>

describe('adding a hazard never improves a verdict', () => {
  it('a danger or a doubt', () => {
    fc.assert(
      fc.property(
        anySituation,
        somePlanned,
        fc.subarray(allDangers, { maxLength: 2 }),
        fc.constantFrom(...allDangers),
        fc.constantFrom(...allDoubts),
        (situation, planned, dangers, danger, doubt) => {
          const before = judge({ ...situation, dangers }, planned).verdict
          expect(worse(judge({ ...situation, dangers: [...dangers, danger] }, planned).verdict, before)).toBe(true)
          expect(worse(judge({ ...situation, dangers, doubts: [doubt] }, planned).verdict, before)).toBe(true)
        },
      ),
      cases(20_000),
    )
  })

  it('a state, a temperature, a charger or a source that was not told before', () => {
    fc.assert(
      fc.property(anySituation, somePlanned, (situation, planned) => {
        const { verdict } = judge(situation, planned)
        for (const known of ['from', 'temperature_C', 'charger', 'source'] as const) {
          // A charger or a source may also bring more: only what is told of the pack itself can but worsen.
          if (known === 'charger' || known === 'source') continue
          const before = judge({ ...situation, [known]: undefined }, planned)
          // Taken to have landed it may be at its goal already: told to be lower there is something to charge.
          if (known === 'from' && before.found.some(({ key }) => key === 'nothingToCharge')) continue
          expect(worse(verdict, before.verdict)).toBe(true)
        }
      }),
      cases(5_000),
    )
  })
})

describe('moving a number towards or beyond its limit never improves a verdict', () => {
  const moves: readonly (readonly [string, (s: Situation, by: number) => Situation])[] = [
    [
      'hotter above 25 °C',
      (s, by) => ({ ...s, temperature_C: (s.temperature_C ?? 25) + ((s.temperature_C ?? 25) >= 25 ? by : 0) }),
    ],
    [
      'colder below 25 °C',
      (s, by) => ({ ...s, temperature_C: (s.temperature_C ?? 25) - ((s.temperature_C ?? 25) <= 25 ? by : 0) }),
    ],
    [
      'more current above the usual',
      (s, by) => ({
        ...s,
        current_A:
          s.current_A !== undefined && s.pack && s.current_A >= 0.5 * s.pack.capacity_Ah
            ? s.current_A * (1 + by)
            : s.current_A,
      }),
    ],
    [
      'a lower cell',
      (s, by) =>
        s.from?.kind === 'rest' && s.act !== 'store'
          ? { ...s, from: { ...s.from, perCell_V: below(s, s.from.perCell_V, by) } }
          : s,
    ],
    [
      'a higher cell',
      (s, by) =>
        s.from?.kind === 'rest' ? { ...s, from: { ...s.from, perCell_V: above(s, s.from.perCell_V, by) } } : s,
    ],
  ]
  const below = ({ pack }: Situation, volts: number, by: number) =>
    pack && volts < pack.chemistry.restFloor_V.value ? Math.max(0.01, volts - by / 10) : volts
  const above = ({ pack }: Situation, volts: number, by: number) =>
    pack && volts > pack.chemistry.full_V.value ? volts + by / 10 : volts

  it.each(moves)('%s', (_, move) => {
    fc.assert(
      fc.property(
        someSituation('charge', 'drain', 'store', 'look'),
        somePlanned,
        fc.double({ min: 0, max: 40, noNaN: true }),
        (situation, planned, by) => {
          const held: Planned = planned
          expect(worse(judge(move(situation, by), held).verdict, judge(situation, held).verdict)).toBe(true)
        },
      ),
      cases(10_000),
    )
  })

  it('longer, more out of a source than it has, more flow on a board, more energy aboard', () => {
    fc.assert(
      fc.property(
        anySituation,
        somePlanned,
        fc.double({ min: 1, max: 4, noNaN: true }),
        (situation, planned, times) => {
          const { verdict } = judge(situation, planned)
          for (const key of ['takes_s', 'flowShare', 'energy_Wh', 'input_A', 'warmest_C'] as const) {
            const more = { ...planned, [key]: planned[key] === undefined ? undefined : planned[key] * times }
            expect(worse(judge(situation, more).verdict, verdict)).toBe(true)
          }
          const sooner = { ...planned, lasts_s: planned.lasts_s && planned.lasts_s / times }
          expect(worse(judge(situation, sooner).verdict, verdict)).toBe(true)
          const fewer = { ...planned, carried: planned.carried && Math.floor(planned.carried / times) }
          expect(worse(judge(situation, fewer).verdict, verdict)).toBe(true)
        },
      ),
      cases(10_000),
    )
  })
})

describe('what is permitted computes, and inside every limit', () => {
  const settable = (situation: Situation & { readonly pack: Pack }, { current_A, cutoff }: Setting) => {
    const { pack, house, charger, temperature_C = 25, dangers } = situation
    const rate_C = current_A / pack.capacity_Ah
    const slack = 1 + 1e-9
    const { chemistry } = pack
    expect(rate_C).toBeLessThanOrEqual(chemistry.highestRate_C.value * slack)
    if (pack.labelRate_C !== undefined && pack.labelRate_C <= 5)
      expect(rate_C).toBeLessThanOrEqual(pack.labelRate_C * slack)
    const club_C = house.maxRate_C?.[chemistry.name]
    if (club_C !== undefined) expect(rate_C).toBeLessThanOrEqual(club_C * slack)
    if (temperature_C <= 10) expect(rate_C).toBeLessThanOrEqual(0.5 * slack)
    if (temperature_C <= 5) expect(rate_C).toBeLessThanOrEqual(0.2 * slack)
    if (dangers.includes('crashed')) expect(rate_C).toBeLessThanOrEqual(0.5 * slack)
    expect(cutoff.perCell_V).toBeLessThanOrEqual(chemistry.full_V.value)
    if (charger?.currents.kind === 'list') expect(charger.currents.steps_A).toContain(current_A)
    if (charger?.power_W !== undefined)
      expect(current_A * cutoff.perCell_V * pack.series).toBeLessThanOrEqual(charger.power_W * slack)
  }

  it('a setting, calm and in a hurry, and the time it takes', () => {
    let permitted = 0
    fc.assert(
      fc.property(someSituation('charge'), fc.subarray(['crashed'] as const), (situation, dangers) => {
        const { permit } = judge({ ...situation, dangers })
        if (!permit) return
        permitted++
        settable(permit.situation, settingFor(permit))
        settable(permit.situation, hurriedSettingFor(permit))
        if (permitted % 10 > 0) return
        const { time_s } = timedCharge(permit, { current_A: situation.current_A })
        expect(time_s.high).toBeGreaterThan(0)
        expect(Number.isFinite(time_s.high)).toBe(true)
      }),
      cases(20_000),
    )
    expect(permitted).toBeGreaterThan(partOf(500))
  })

  it('no permit for a cell that is dead or above full, whatever else holds', () => {
    fc.assert(
      fc.property(someSituation('charge', 'look'), someLevel, (situation, from) => {
        const { pack } = situation
        const dead = from.kind === 'rest' && from.perCell_V < pack.chemistry.damage_V.value
        const over = from.kind === 'rest' && from.perCell_V > pack.chemistry.full_V.value
        if (dead || over) expect(judge({ ...situation, from }).permit).toBeUndefined()
      }),
      cases(10_000),
    )
  })
})

it('every rule that fits has words, and a refusal says what to do', () => {
  const locale = english('.')
  fc.assert(
    fc.property(anySituation, somePlanned, fc.subarray(allDangers, { maxLength: 3 }), (situation, planned, dangers) => {
      for (const found of judge({ ...situation, dangers }, planned).found) {
        const lines = linesOf(found, locale)
        expect(lines.length).toBeGreaterThanOrEqual(found.weight === 'refuse' ? 2 : 1)
        for (const line of lines) expect(line).not.toMatch(/undefined|NaN|Infinity/)
      }
    }),
    cases(5_000),
  )
})

it('whoever may not charge is told no current to charge with', () => {
  const locale = english('.')
  const ofCurrent: readonly string[] = ['currentTooHigh', 'stepTooLarge', 'slowStartOnBoard']
  let forbidden = 0
  fc.assert(
    fc.property(anySituation, somePlanned, fc.subarray(allDangers, { maxLength: 2 }), (situation, planned, dangers) => {
      const { found } = judge({ ...situation, dangers }, planned)
      if (!found.some(({ weight, key }) => weight === 'refuse' && !ofCurrent.includes(key))) return
      forbidden++
      const said = found.flatMap(one => linesOf(one, locale).map(String)).join(' ')
      expect(said).not.toMatch(
        /\bset [\d.]+ m?A\b|hold the charger to|all that .*allows|(?:tenth|fifth) of the (?:usual )?current/i,
      )
    }),
    cases(10_000),
  )
  expect(forbidden).toBeGreaterThan(partOf(500))
})
