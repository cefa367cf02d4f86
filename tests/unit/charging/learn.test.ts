// What is learned from a pack's own charges: the cell that they were of, and never a higher limit.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/charging/envelope/judge.ts'
import { chargeTimeBand } from '../../../src/charging/setting/band.ts'
import { settingFor } from '../../../src/charging/setting/setting.ts'
import { cellWith } from '../../../src/charging/simulation/cell.ts'
import type { ChargeRequest } from '../../../src/charging/simulation/charge.ts'
import { chargeCell } from '../../../src/charging/simulation/simulate.ts'
import { situationOf } from '../../../src/charging/situation/situation.ts'
import { liIon } from '../../../src/charging/things/chemistries.ts'
import type { Learned } from '../../../src/charging/things/learned.ts'
import type { Pack } from '../../../src/charging/things/pack.ts'
import type { ChargeNote } from '../../../src/charging/upkeep/charge-note.ts'
import { learn } from '../../../src/charging/upkeep/learn.ts'
import { somePack } from '../../support/arbitraries.ts'
import { cases } from '../../support/cases.ts'

const pack: Pack = { chemistry: liIon, series: 4, parallel: 1, capacity_Ah: 3 }
const requestAt = (current_A: number, soc = 0.1): ChargeRequest => ({
  pack,
  current_A,
  from: { kind: 'soc', soc },
  target: { kind: 'voltage', perCell_V: 4.2 },
  termination_A: 0.3,
})

/** An aged cell of middling resistance, which the label tells nothing of. */
const truth = cellWith(pack, 25, { capacity_Ah: 2.55, atOnce_ohmAh: 0.09, diffusion_h: 0.2 })
const chargeAt = (current_A: number, soc?: number, cell = truth) => chargeCell(requestAt(current_A, soc), cell)

function noteAt(current_A: number, soc?: number, cell = truth): ChargeNote {
  const { charge_Ah, duration_s, timeToCutoff_s } = chargeAt(current_A, soc, cell)
  const { from, termination_A } = requestAt(current_A, soc)
  const to = { kind: 'rest', perCell_V: 4.2 } as const
  return { charge_Ah, duration_s, timeToCutoff_s, current_A, termination_A, from, to, temperature_C: 25 }
}

const three = [noteAt(1.5), noteAt(1.5, 0.2), noteAt(1.5, 0.05)]
const learned = learn(pack, three) as Learned
const off = (told: number, measured: number) => Math.abs(told / measured - 1)

describe('three charges of a cell', () => {
  const timesAt = (current_A: number) => chargeTimeBand({ ...requestAt(current_A), temperature_C: 25, learned })

  it.each([
    ['their own rate', 1.5, 0.01],
    ['half of it', 0.75, 0.02],
    ['twice it', 3, 0.06],
  ])('tell the next at %s', (_, current_A, most) => {
    const { charge, time_s, bands } = timesAt(current_A)
    const { timeToCutoff_s } = bands()
    const measured = chargeAt(current_A)
    expect(off(charge.duration_s, measured.duration_s)).toBeLessThan(most)
    expect(off(charge.timeToCutoff_s, measured.timeToCutoff_s)).toBeLessThan(1.5 * most)
    expect(measured.duration_s).toBeGreaterThan(time_s.low)
    expect(measured.duration_s).toBeLessThan(time_s.high)
    expect(measured.timeToCutoff_s).toBeGreaterThan(timeToCutoff_s.low)
    expect(measured.timeToCutoff_s).toBeLessThan(timeToCutoff_s.high)
  })

  it('make a band much narrower than the label does, and each one makes it narrower', () => {
    const width = (notes: readonly ChargeNote[]) => {
      const { time_s } = chargeTimeBand({ ...requestAt(1.5), learned: learn(pack, notes) })
      return time_s.high - time_s.low
    }
    expect(width(three.slice(0, 1))).toBeLessThan(0.6 * width([]))
    expect(width(three)).toBeLessThan(width(three.slice(0, 1)))
  })

  it('carry a cell beyond the few that its class was measured on', () => {
    const stiff = cellWith(pack, 25, { capacity_Ah: 3, atOnce_ohmAh: 0.02, diffusion_h: 0.03 })
    const notes = [0.05, 0.4, 0.8].map(soc => noteAt(1.5, soc, stiff))
    const topOff = { ...requestAt(3, 0.8), temperature_C: 25, learned: learn(pack, notes) }
    expect(off(chargeTimeBand(topOff).charge.duration_s, chargeAt(3, 0.8, stiff).duration_s)).toBeLessThan(0.09)
  })

  it('tell the same each time', () => {
    expect(learn(pack, three)).toEqual(learned)
  })
})

describe('a note that does not go with the others', () => {
  const stopped: ChargeNote = { ...noteAt(1.5), charge_Ah: 1.1, duration_s: 2700 }

  it.each([0, 1, 3])('is found out at place %i, and changes nothing', at => {
    const notes = three.toSpliced(at, 0, stopped)
    const { odd, charges } = learn(pack, notes) as Learned
    expect(odd).toEqual([at])
    expect(charges).toBe(3)
  })

  it('is believed once the pack keeps giving the like', () => {
    const faded = [stopped, stopped, stopped]
    const { odd } = learn(pack, [...three.slice(0, 2), ...faded]) as Learned
    expect(odd).toEqual([0, 1])
  })
})

it('nothing is learned from charges that tell neither start nor resistance', () => {
  expect(learn(pack, [{ charge_Ah: 2, to: { kind: 'rest', perCell_V: 4.2 } }])).toBeUndefined()
  expect(learn(pack, [])).toBeUndefined()
})

it('never raises a current or a voltage: the setting and its limits are those of the label, for any pack and log', () => {
  const share = fc.double({ min: 0.5, max: 1.25, noNaN: true })
  const rate_C = fc.double({ min: 0.2, max: 3, noNaN: true })
  fc.assert(
    fc.property(somePack, fc.array(fc.tuple(share, rate_C), { minLength: 1, maxLength: 4 }), (some, charges) => {
      const notes = charges.map(([put, rate]) => ({
        charge_Ah: put * some.capacity_Ah,
        current_A: rate * some.capacity_Ah,
        duration_s: (4000 * put) / rate,
        from: { kind: 'soc', soc: 0 } as const,
        to: { kind: 'rest', perCell_V: some.chemistry.full_V.value } as const,
      }))
      const known = learn(some, notes)
      const settingWith = (all: readonly Learned[] | undefined) => {
        const around = { house: {}, dangers: [], doubts: [], learned: all }
        const { permit } = judge(situationOf({ act: 'charge', pack: some }, around))
        return permit && settingFor(permit)
      }
      expect(settingWith(known && [known])).toEqual(settingWith(undefined))
    }),
    cases(60),
  )
})
