// What was told before, and of which pack; and what a situation takes over from around the question.

import { describe, expect, it } from 'vitest'
import { judge } from '../../../src/charging/envelope/judge.ts'
import { limits } from '../../../src/charging/envelope/limits/index.ts'
import { traits } from '../../../src/charging/envelope/traits.ts'
import { type Danger, dangerNamed, dangers, emergencies, unsound } from '../../../src/charging/situation/dangers.ts'
import { type Doubt, doubts } from '../../../src/charging/situation/doubts.ts'
import { type KeptDanger, keptIn, markOf, mayBeSame, type PackMark } from '../../../src/charging/situation/kept.ts'
import type { Rule } from '../../../src/charging/situation/rule.ts'
import { type Act, situationOf } from '../../../src/charging/situation/situation.ts'
import { liIon } from '../../../src/charging/things/chemistries.ts'
import { noHouseLimits as house } from '../../../src/charging/things/house-limits.ts'
import { plover } from './borders.ts'

const swollen = (of: PackMark, doubted = false): KeptDanger => ({ danger: 'swollen', typed: 'puffed', of, doubted })
const mark = { series: 3, capacity_Ah: 1, chemistry: 'LiPo' }
const other = { ...plover, series: 4 }
const around = { house, dangers: [], doubts: [] }

describe('what was told of two packs', () => {
  it.each<[PackMark, boolean]>([
    [mark, true],
    [{}, true],
    [{ series: 3 }, true],
    [{ ...mark, series: 4 }, false],
    [{ ...mark, capacity_Ah: 2 }, false],
    [{ ...mark, chemistry: 'LiHV' }, false],
    [{ capacity_Ah: 2 }, false],
  ])('%j may be of this one: %s', (one, isSame) => {
    expect(mayBeSame(one, mark)).toBe(isSame)
    expect(mayBeSame(mark, one)).toBe(isSame)
  })

  it('is marked by what was told of it, not by what was assumed', () => {
    expect(markOf(plover, [])).toEqual(mark)
    expect(markOf(plover, ['cellsUnknown'])).toEqual({ ...mark, series: undefined })
    expect(markOf(plover, ['chemistryAssumed'])).toEqual({ ...mark, chemistry: undefined })
    expect(markOf(plover, [], true)).toEqual({ chemistry: 'LiPo' })
  })
})

describe('a danger that was told before', () => {
  const kept = [swollen(mark), swollen({ series: 4 })]
  it.each([
    ['the pack that is asked about', { pack: plover }, [kept[0]]],
    ['another', { pack: other }, [kept[1]]],
    ['one of those on a board', { pack: { ...plover, series: 6 }, board: [{ pack: other }, { pack: plover }] }, kept],
    ['the pack that feeds the charger', { pack: other, source: { kind: 'battery', pack: plover } as const }, kept],
    ['none', {}, []],
    ['what feeds it, which is no battery', { source: { kind: 'power bank', label_Wh: 74 } as const }, []],
  ])('comes back with %s', (_, dealt, expected) => {
    expect(keptIn(kept, dealt, [])).toEqual(expected)
  })

  it('comes back with any pack of which too little is known', () => {
    expect(keptIn(kept, { pack: { ...plover, series: 2 } }, ['cellsUnknown'])).toEqual(kept)
    expect(keptIn(kept, { pack: { ...plover, series: 2 }, kindOnly: true }, [])).toEqual(kept)
  })

  it('is told of the situation, or a doubt of it where it was taken back', () => {
    const asked = { act: 'charge', pack: plover } as const
    expect(situationOf(asked, { ...around, kept: [swollen(mark)] })).toMatchObject({ dangers: ['swollen'], doubts: [] })
    const taken = situationOf(asked, { ...around, kept: [swollen(mark, true)] })
    expect(taken).toMatchObject({ dangers: [], doubts: ['toldBefore'] })
    expect(situationOf(asked, { ...around, kept: [swollen({ series: 4 })] })).toMatchObject({ dangers: [], doubts: [] })
    expect(situationOf(asked, around)).toMatchObject({ dangers: [], doubts: [], kept: [] })
  })
})

it('a situation has each danger once, of whatever it was told', () => {
  const beside = { pack: plover, dangers: ['wet', 'swollen'] } as const
  const told = situationOf(
    { act: 'board', pack: plover, board: [beside, { pack: plover }], dangers: ['swollen'], doubts: ['cellsUnknown'] },
    { house, dangers: ['children'], doubts: ['cellsUnknown', 'notUnderstood'] },
  )
  expect(told.dangers).toEqual(['swollen', 'wet', 'children'])
  expect(told.doubts).toEqual(['cellsUnknown', 'notUnderstood'])
})

it('dangers are known by name; an emergency is told before anything else, and a broken pack is one to keep away from', () => {
  for (const danger of Object.keys(dangers) as Danger[]) expect(dangerNamed(danger)).toBe(danger)
  expect(() => dangerNamed('nonesuch')).toThrow('no danger: nonesuch')
  expect(emergencies).toEqual(['fire', 'injury'])
  expect(unsound).toEqual(['overfull', 'swollen', 'pierced', 'wet', 'reversed'])
})

it('every rule names who says so', () => {
  const rules: readonly (readonly [string, Rule])[] = Object.entries({ ...dangers, ...doubts, ...limits, ...traits })
  for (const [key, { from }] of rules) expect(from, key).toMatch(/[a-z]{3}/i)
  expect(limits.tired.from).toMatch(/^common practice: /)
  expect(limits.notInTheAir.from).not.toContain('undefined')
  for (const doubt of Object.keys(doubts) as Doubt[]) expect(doubts[doubt].weight).toMatch(/must|care/)
})

it('without a pack nothing is measured, whatever is told', () => {
  for (const act of ['charge', 'drain', 'store', 'carry', 'board', 'look'] as const satisfies readonly Act[]) {
    const told = { act, from: { kind: 'rest', perCell_V: 2 }, current_A: 50, cells_V: [1, 4.5] } as const
    const { found, permit } = judge(situationOf(told, around))
    expect(permit).toBeUndefined()
    expect(found.filter(({ weight, key }) => weight === 'refuse' && key !== 'boardOfOne')).toEqual([])
  }
})

it('of a round cell what the label allows is judged as of any other', () => {
  const { found } = judge(situationOf({ act: 'charge', pack: { ...plover, chemistry: liIon }, current_A: 1.1 }, around))
  expect(found.map(({ key }) => key)).toContain('currentTooHigh')
})
