// What a pack's log says: capacity and resistance from what was noted, and a verdict that only worsens with the pack.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge, type Verdict } from '../../../src/charging/envelope/judge.ts'
import { resistanceFactor } from '../../../src/charging/simulation/resistance.ts'
import { situationOf } from '../../../src/charging/situation/situation.ts'
import { lihv, lipo } from '../../../src/charging/things/chemistries.ts'
import { socAt } from '../../../src/charging/things/curve.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import type { Condition } from '../../../src/charging/upkeep/age-signs.ts'
import { type ChargeNote, capacityReading } from '../../../src/charging/upkeep/charge-note.ts'
import { meterCorrection } from '../../../src/charging/upkeep/flight-meter.ts'
import { logShown } from '../../../src/charging/upkeep/log-shown.ts'
import { judgeLog } from '../../../src/charging/upkeep/pack-log.ts'
import { somePack } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'

const wren: Pack = { chemistry: lihv, series: 3, parallel: 1, capacity_Ah: 0.72 }
const full = { kind: 'soc', soc: 1 } as const
const empty = { kind: 'soc', soc: 0 } as const
const between = (min: number, max: number) => fc.double({ min, max, noNaN: true })
const severity: Record<Condition, number> = { healthy: 0, ageing: 1, retire: 2 }
const cycle = (charge_Ah: number, rest: Partial<ChargeNote> = {}): ChargeNote => ({
  charge_Ah,
  from: empty,
  to: full,
  ...rest,
})
const conditionOf = (notes: readonly ChargeNote[], pack = wren) => judgeLog(pack, notes).condition

describe('the capacity by one charge', () => {
  it('is what a full cycle put back, within three percent', () => {
    const reading = capacityReading(wren, cycle(0.69))
    expect(reading).toMatchObject({ capacity_Ah: 0.69, share: 1 })
    expect(reading?.band_Ah.low).toBeCloseTo(0.69 * 0.97, 9)
    expect(reading?.band_Ah.high).toBeCloseTo(0.69 * 1.03, 9)
  })

  it('is the charge over the share that the volts at rest say was moved', () => {
    const share = 1 - socAt(lipo, 3.6)
    const pack: Pack = { ...wren, chemistry: lipo }
    const note = { charge_Ah: 0.6, from: { kind: 'rest', perCell_V: 3.6 }, to: full } as const
    expect(capacityReading(pack, note)?.capacity_Ah).toBeCloseTo(0.6 / share, 9)
  })

  it('is not told by a small charge, nor without its start', () => {
    expect(capacityReading(wren, { charge_Ah: 0.3, from: { kind: 'soc', soc: 0.6 }, to: full })).toBeUndefined()
    expect(capacityReading(wren, { charge_Ah: 0.6, to: full })).toBeUndefined()
  })

  it('lies in its band, for any pack and start', () => {
    fc.assert(
      fc.property(somePack, between(2.5, 4.35), between(3, 4.35), between(0.2, 1.2), (pack, from_V, to_V, share) => {
        const charge_Ah = share * pack.capacity_Ah
        const reading = capacityReading(pack, {
          charge_Ah,
          from: { kind: 'rest', perCell_V: from_V },
          to: { kind: 'rest', perCell_V: to_V },
        })
        if (!reading) return
        const { capacity_Ah, band_Ah } = reading
        expect(band_Ah.low).toBeLessThanOrEqual(capacity_Ah)
        expect(band_Ah.high).toBeGreaterThanOrEqual(capacity_Ah)
        expect(capacity_Ah).toBeGreaterThanOrEqual(charge_Ah * (1 - 1e-9))
        expect(band_Ah.high).toBeLessThanOrEqual(4 * charge_Ah * (1 + 1e-9))
      }),
    )
  })
})

describe('the verdict', () => {
  it('is none where nothing noted tells of age', () => {
    expect(judgeLog(wren, []).condition).toBeUndefined()
    expect(conditionOf([{ charge_Ah: 0.6, to: full }])).toBeUndefined()
  })

  it('leaves a new pack that holds less than its label alone, and retires one far below it', () => {
    expect(conditionOf([cycle(0.87 * 0.72)])).toBe('healthy')
    expect(conditionOf([cycle(0.7 * 0.72)])).toBe('retire')
  })

  it('compares with the start of the log', () => {
    const start = [cycle(0.7), cycle(0.71), cycle(0.7)]
    expect(conditionOf([...start, cycle(0.7)])).toBe('healthy')
    expect(conditionOf([...start, cycle(0.62), cycle(0.62)])).toBe('ageing')
    expect(conditionOf([...start, cycle(0.55), cycle(0.55)])).toBe('retire')
  })

  it('is not upset by one odd note', () => {
    expect(conditionOf([cycle(0.7), cycle(0.71), cycle(0.7), cycle(0.7), cycle(0.4)])).toBe('healthy')
  })

  it('goes by the resistance, at 25 °C whatever it was read at', () => {
    const read = (ohm: number, temperature_C = 25): ChargeNote => ({
      charge_Ah: 0.6,
      to: full,
      cells_ohm: [ohm * resistanceFactor(temperature_C)],
      temperature_C,
    })
    const start = [read(0.02), read(0.02, 5), read(0.02, 35)]
    expect(conditionOf([...start, read(0.02, 5)])).toBe('healthy')
    expect(conditionOf([...start, read(0.034, 10), read(0.034)])).toBe('ageing')
    expect(conditionOf([...start, read(0.065), read(0.065, 5)])).toBe('retire')
    expect(conditionOf([read(0.02 * 20)])).toBe('retire')
  })

  it('sees a cell that stands apart, by resistance and by volts at the end', () => {
    expect(conditionOf([cycle(0.7, { cells_ohm: [0.012, 0.012, 0.02] })])).toBe('ageing')
    expect(conditionOf([cycle(0.7, { cells_V: [4.35, 4.34, 4.35] })])).toBe('healthy')
    expect(conditionOf([cycle(0.7, { cells_V: [4.35, 4.25, 4.35] })])).toBe('ageing')
    expect(conditionOf([cycle(0.7, { cells_V: [4.35, 4.1, 4.35] })])).toBe('retire')
  })

  const someLog = fc
    .array(fc.record({ share: between(0.3, 1.2), ohmAh: between(0.005, 0.5) }), { minLength: 1, maxLength: 12 })
    .map(
      readings => (capacity_Ah: number) =>
        readings.map(({ share, ohmAh }) => cycle(share * capacity_Ah, { cells_ohm: [ohmAh / capacity_Ah] })),
    )

  it('never improves where the last charge put back less, or read more resistance', () => {
    const seen = new Set<Condition>()
    fc.assert(
      fc.property(somePack, someLog, between(0.3, 1), between(1, 4), (pack, log, less, more) => {
        const notes = log(pack.capacity_Ah)
        const last = notes.at(-1) as ChargeNote
        const worse: ChargeNote = {
          ...last,
          charge_Ah: last.charge_Ah * less,
          cells_ohm: last.cells_ohm?.map(ohm => ohm * more) ?? [],
        }
        const before = conditionOf(notes, pack)
        const after = conditionOf([...notes.slice(0, -1), worse], pack)
        if (!before || !after) throw new Error('a full cycle tells of age')
        seen.add(before)
        expect(severity[after]).toBeGreaterThanOrEqual(severity[before])
      }),
      cases(1_000),
    )
    expect(seen.size).toBe(3)
  })
})

describe('the envelope', () => {
  const verdicts: Record<Condition, Verdict> = { healthy: 'go', ageing: 'go with care', retire: 'do not charge' }
  const rank: Record<Verdict, number> = { go: 0, 'go with care': 1, 'do not charge': 2 }
  const around = { house: {}, dangers: [], doubts: [] }

  it('calls no pack better than its log does, and a sound one go', () => {
    const seen = new Set<Condition>()
    const note = fc.record({
      charge_Ah: between(0.3, 0.79),
      from: fc.constantFrom(empty, undefined),
      to: fc.constant(full),
      cells_ohm: fc.option(fc.array(between(0.01, 0.2), { minLength: 3, maxLength: 3 }), { nil: undefined }),
      cells_V: fc.option(fc.array(between(4.2, 4.35), { minLength: 3, maxLength: 3 }), { nil: undefined }),
    })
    fc.assert(
      fc.property(fc.array(note, { minLength: 1, maxLength: 8 }), notes => {
        const log = judgeLog(wren, notes)
        if (!log.condition) return
        seen.add(log.condition)
        const situation = situationOf({ act: 'look', pack: wren }, around)
        const { verdict } = judge(situation, logShown(wren, log, notes))
        expect(rank[verdict]).toBeGreaterThanOrEqual(rank[verdicts[log.condition]])
        if (log.condition === 'healthy') expect(verdict).toBe('go')
      }),
      cases(2_000),
    )
    expect(seen.size).toBe(3)
  })

  it('refuses a pack that took back more than a tenth over its label', () => {
    const verdictOf = (notes: readonly ChargeNote[]) =>
      judge(situationOf({ act: 'look', pack: wren }, around), logShown(wren, judgeLog(wren, notes), notes)).verdict
    expect(verdictOf([cycle(0.79)])).toBe('go')
    expect(verdictOf([cycle(0.8)])).toBe('do not charge')
    expect(verdictOf([cycle(0.8), cycle(0.7)])).toBe('go')
  })
})

describe('the correction of a current meter', () => {
  const flight = fc.record({ counted_Ah: between(0.1, 5), putBack_Ah: between(0.1, 5) })

  it('makes the count agree with what was put back, whichever way the factor works', () => {
    fc.assert(
      fc.property(fc.array(flight, { minLength: 1 }), between(10, 1000), (flights, scale) => {
        const found = meterCorrection(flights, scale)
        if (!found?.scale) throw new Error('no correction')
        const sum = (key: 'counted_Ah' | 'putBack_Ah') => flights.reduce((all, one) => all + one[key], 0)
        const raised = sum('counted_Ah') * (found.scale.raising / scale)
        const lowered = sum('counted_Ah') * (scale / found.scale.lowering)
        expect(raised / sum('putBack_Ah')).toBeCloseTo(1, 9)
        expect(lowered / sum('putBack_Ah')).toBeCloseTo(1, 9)
        expect(found.ratio).toBeGreaterThanOrEqual(found.band.low * (1 - 1e-9))
        expect(found.ratio).toBeLessThanOrEqual(found.band.high * (1 + 1e-9))
      }),
    )
  })

  it('is none without a flight, and no factor without the present one', () => {
    expect(meterCorrection([])).toBeUndefined()
    expect(meterCorrection([{ counted_Ah: 0.5, putBack_Ah: 0.6 }])).toEqual({
      ratio: 1.2,
      band: { low: 1.2, high: 1.2 },
    })
  })
})
