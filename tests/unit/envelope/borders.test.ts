// Each limit at its border, in every act: what it leaves alone, what it does not, and what the verdict is then.

import { describe, expect, it } from 'vitest'
import { judge, type Verdict, verdictOf } from '../../../src/charging/envelope/judge.ts'
import { type LimitKey, limits } from '../../../src/charging/envelope/limits/index.ts'
import type { Limits } from '../../../src/charging/envelope/limits/row.ts'
import type { Danger } from '../../../src/charging/situation/dangers.ts'
import type { Weight } from '../../../src/charging/situation/rule.ts'
import { type Act, situationOf } from '../../../src/charging/situation/situation.ts'
import { noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import { type Border, borders, guiding, leaving, ofAll, plover } from './borders.ts'

const acts: readonly Act[] = ['charge', 'drain', 'store', 'carry', 'board', 'look']
const heaviest: Readonly<Record<Weight, Verdict>> = {
  refuse: 'do not charge',
  must: 'go with care',
  care: 'go with care',
  note: 'go',
}

function judgedAt([, , , at]: Border, value: number, act: Act, told: readonly Danger[] = []) {
  const { planned, house = noHouseLimits, ...asked } = at(value)
  const { pack = plover, from = { kind: 'rest', perCell_V: 3.8 } } = asked
  const beside = { pack, from }
  const board = act === 'board' && !asked.cells_V ? [beside, beside] : undefined
  return judge(situationOf({ pack, act, board, ...asked }, { house, dangers: told, doubts: [] }), planned)
}

it('has a border for every limit', () => {
  expect([...new Set(borders.map(([key]) => key))].toSorted()).toEqual(Object.keys(limits).toSorted())
})

describe.each(borders)('%s', (...border) => {
  const [key, weight, limited, , inside, outside] = border
  const spoken = (value: number, act: Act) => judgedAt(border, value, act).found.find(found => found.key === key)

  it(`begins to ${weight} beyond ${inside}`, () => {
    for (const act of acts) {
      expect(spoken(inside, act), act).toBeUndefined()
      expect(spoken(outside, act)?.weight, act).toBe(limited.includes(act) ? weight : undefined)
    }
  })

  it('weighs in the verdict, by itself alone', () => {
    const act = limited[0] as Act
    const { found, verdict } = judgedAt(border, outside, act)
    expect(verdictOf(found.filter(one => one.key === key))).toBe(heaviest[weight])
    expect(verdict).toBe(verdictOf(found))
    if (weight === 'refuse') expect(verdict).toBe('do not charge')
    else if (weight !== 'note') expect(verdict).not.toBe('go')
  })

  it('names the number and the limit that it broke', () => {
    const { met, than } = spoken(outside, limited[0] as Act) ?? {}
    const { side } = (limits as Limits)[key] ?? {}
    if (side === 'above') expect(met).toBeGreaterThan(than ?? Number.NaN)
    else if (side === 'below') expect(met).toBeLessThan(than ?? Number.NaN)
    else expect(met).toBeLessThanOrEqual(than ?? Number.NaN)
  })

  it(`is ${guiding.includes(key) ? 'not ' : ''}said beside a danger`, () => {
    const beside = judgedAt(border, outside, limited[0] as Act, ['fire']).found.map(one => one.key)
    expect(beside.includes(key)).toBe(!guiding.includes(key))
  })
})

it('some speak of all that was asked for, and some stay with the pack', () => {
  const rows = Object.entries(limits as Limits)
  expect(rows.filter(([, limit]) => limit.ofAll).map(([key]) => key)).toEqual(ofAll)
  expect(Object.fromEntries(rows.flatMap(([key, { leaves }]) => (leaves ? [[key, leaves]] : [])))).toEqual(leaving)
})

it('the heaviest of one side of a number speaks for the others, but not for what is said besides', () => {
  const of = (key: LimitKey, value: number) => {
    const border = borders.find(one => one[0] === key) as Border
    return judgedAt(border, value, 'charge').found.map(found => found.key)
  }
  expect(of('tooCold', -1).filter(key => ['tooCold', 'veryCold', 'cold', 'cool'].includes(key))).toEqual(['tooCold'])
  expect(of('veryCold', 3).filter(key => ['veryCold', 'cold', 'cool'].includes(key))).toEqual(['veryCold'])
  expect(of('veryLong', 13 * 3600).filter(key => ['veryLong', 'long'].includes(key))).toEqual(['veryLong'])
})
