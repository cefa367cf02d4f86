// How rules become a verdict: which are said, in what order, and what several judgements are together.

import { describe, expect, it } from 'vitest'
import { judge, type RuleKey, verdictOf } from '../../../src/charging/envelope/judge.ts'
import { reasonsOf, settle } from '../../../src/charging/envelope/settle.ts'
import { type TraitKey, traits } from '../../../src/charging/envelope/traits.ts'
import { type Danger, dangers } from '../../../src/charging/situation/dangers.ts'
import type { Doubt } from '../../../src/charging/situation/doubts.ts'
import { type Around, situationOf, type Told } from '../../../src/charging/situation/situation.ts'
import { liFe, lihv } from '../../../src/charging/things/chemistries.ts'
import { noHouseLimits } from '../../../src/charging/things/house-limits.ts'
import { plover } from './borders.ts'

const around: Around = { house: noHouseLimits, dangers: [], doubts: [] }
const of = (told: Partial<Told>, more: Partial<Around> = {}) =>
  judge(situationOf({ act: 'charge', pack: plover, ...told }, { ...around, ...more }))
const keysOf = (told: Partial<Told>, more?: Partial<Around>) => of(told, more).found.map(({ key }) => key)
const rest = (perCell_V: number) => ({ kind: 'rest', perCell_V }) as const
const car = (more: object) => ({ source: { kind: 'vehicle outlet', fuse_A: 10, engine: 'off', ...more } }) as const
const watts = (kind: 'supply' | 'mains' | 'panel') => ({ source: { kind: 'watts', of: kind, power_W: 60 } }) as const

const fitting: Readonly<Record<TraitKey, { weight: string; fits: Partial<Told>[]; not: Partial<Told>[] }>> = {
  starterUnmeasured: { weight: 'care', fits: [car({})], not: [car({ rest_V: 12.6 }), car({ engine: 'running' }), {}] },
  starter: {
    weight: 'care',
    fits: [car({}), car({ battery: 'starter' })],
    not: [car({ battery: 'deep-cycle' }), car({ engine: 'running' }), watts('mains'), {}],
  },
  engineRuns: { weight: 'note', fits: [car({ engine: 'running' })], not: [car({}), watts('mains'), {}] },
  batterySource: { weight: 'note', fits: [{ source: { kind: 'battery', pack: plover } }], not: [car({}), {}] },
  powerBank: { weight: 'note', fits: [{ source: { kind: 'power bank', label_Wh: 74 } }], not: [car({}), {}] },
  mains: { weight: 'note', fits: [watts('mains')], not: [watts('panel'), watts('supply'), car({}), {}] },
  panel: { weight: 'care', fits: [watts('panel')], not: [watts('mains'), watts('supply'), car({}), {}] },
  board: { weight: 'care', fits: [{ act: 'board' }], not: [{}, { act: 'drain' }] },
  onlyAsLabelled: {
    weight: 'note',
    fits: [{ pack: { ...plover, chemistry: lihv } }],
    not: [{}, { pack: { ...plover, chemistry: liFe } }, { act: 'drain', pack: { ...plover, chemistry: lihv } }],
  },
  neverOtherMode: {
    weight: 'note',
    fits: [{ pack: { ...plover, chemistry: liFe } }],
    not: [{}, { pack: { ...plover, chemistry: lihv } }, { act: 'drain', pack: { ...plover, chemistry: liFe } }],
  },
  singleCell: {
    weight: 'note',
    fits: [{ pack: { ...plover, series: 1 } }, { act: 'board', pack: { ...plover, series: 1 } }],
    not: [
      {},
      { act: 'look', pack: { ...plover, series: 1 } },
      { kindOnly: true, pack: { ...plover, series: 1 } },
      { doubts: ['cellsUnknown'], pack: { ...plover, series: 1 } },
    ],
  },
  balance: {
    weight: 'note',
    fits: [{}, { act: 'board' }, { pack: { ...plover, series: 2 } }],
    not: [{ pack: { ...plover, series: 1 } }, { kindOnly: true }, { act: 'carry' }],
  },
  labelRate: {
    weight: 'note',
    fits: [{ pack: { ...plover, labelRate_C: 2 } }],
    not: [{}, { act: 'store', pack: { ...plover, labelRate_C: 2 } }],
  },
  drained: { weight: 'note', fits: [{ act: 'drain' }], not: [{}, { act: 'store' }] },
  measured: { weight: 'note', fits: [{ cells_V: [3.8, 3.8, 3.8] }], not: [{}] },
  metered: { weight: 'note', fits: [{ meter: { shown_V: 4.2, measured_V: 4.2 } }], not: [{}] },
  carried: { weight: 'note', fits: [{ act: 'carry' }], not: [{}] },
  looked: { weight: 'note', fits: [{}, { act: 'board' }], not: [{ act: 'look' }, { act: 'drain' }] },
}

describe.each(Object.entries(fitting))('%s', (key, { weight, fits, not }) => {
  it('is said where it fits, and nowhere else', () => {
    for (const told of fits)
      expect(of(told).found.find(found => found.key === key)?.weight, JSON.stringify(told)).toBe(weight)
    for (const told of not) expect(keysOf(told), JSON.stringify(told)).not.toContain(key)
    expect(traits[key as TraitKey].weight).toBe(weight)
  })
})

describe('a verdict', () => {
  it.each([
    [[], 'go'],
    [['note'], 'go'],
    [['note', 'care'], 'go with care'],
    [['must'], 'go with care'],
    [['note', 'refuse', 'care'], 'do not charge'],
  ] as const)('of %j is %s', (weights, verdict) => {
    expect(verdictOf(weights.map(weight => ({ weight })))).toBe(verdict)
  })

  it.each(Object.entries(dangers))('of %s told is as it weighs, whatever is done', (danger, { weight }) => {
    for (const act of ['charge', 'drain', 'store', 'carry', 'look'] as const) {
      const { verdict, permit, found } = of({ act }, { dangers: [danger as Danger] })
      expect(verdict).toBe(weight === 'refuse' ? 'do not charge' : 'go with care')
      expect(permit === undefined).toBe(weight === 'refuse')
      expect(found[0]?.key).toBe(danger)
    }
  })

  it('permits only where there is a pack, and what it judged', () => {
    expect(judge(situationOf({ act: 'look' }, around)).permit).toBeUndefined()
    const { permit, situation } = of({})
    expect(permit?.situation).toBe(situation)
  })
})

describe('what is found', () => {
  it('stands heaviest first, and of one weight in the order of the tables, however it was told', () => {
    const found = of(
      { temperature_C: 7, from: rest(2.9) },
      { doubts: ['notUnderstood'], dangers: ['children', 'fire'] },
    )
    const order = ['refuse', 'must', 'care', 'note']
    const ranks = found.found.map(({ weight }) => order.indexOf(weight))
    expect(ranks).toEqual(ranks.toSorted())
    expect(found.found.slice(0, 2).map(({ key }) => key)).toEqual(['fire', 'children'])
    expect(found.found.filter(({ weight }) => weight === 'care').map(({ key }) => key)).toEqual([
      'cold',
      'notUnderstood',
    ])
  })

  it('has a doubt that must be said before a care that was measured', () => {
    const found = keysOf({ temperature_C: 7 }, { doubts: ['chemistryAssumed'] })
    expect(found.indexOf('chemistryAssumed')).toBeLessThan(found.indexOf('cold'))
    expect(found).toContain('cold')
  })

  it('speaks of both sides of one number', () => {
    const charger = { currents: { kind: 'list', steps_A: [1] }, maxSeries: 2, needsBalanceLead: true } as const
    expect(keysOf({ charger, balanceLead: false })).toEqual(expect.arrayContaining(['tooManyCells', 'noLeadToSee']))
  })

  it('compares no volts of packs of another kind, and counts none twice', () => {
    const there = { pack: plover, from: rest(3.8) }
    const mixed = keysOf({ act: 'board', board: [there, { pack: { ...plover, chemistry: liFe }, from: rest(3.3) }] })
    expect(mixed).toContain('boardChemistries')
    expect(mixed).not.toContain('boardApart')
    expect(keysOf({ act: 'board', board: [there, { pack: plover, dangers: ['swollen'] }] })).not.toContain(
      'boardUnknown',
    )
    expect(keysOf({ act: 'board', board: [{ pack: plover }] })).not.toContain('boardUnknown')
  })

  it.each<Doubt>(['cellsUnknown', 'cellsByVolts', 'chemistryAssumed', 'askedLongAgo'])(
    'holds the doubt %s about a pack only where one is dealt with',
    doubt => {
      expect(keysOf({}, { doubts: [doubt, 'notUnderstood'] })).toEqual(expect.arrayContaining([doubt, 'notUnderstood']))
      for (const told of [{ pack: undefined }, { labelOnly: true }] as const) {
        expect(keysOf(told, { doubts: [doubt, 'notUnderstood'] })).not.toContain(doubt)
        expect(keysOf(told, { doubts: [doubt, 'notUnderstood'] })).toContain('notUnderstood')
      }
    },
  )
})

describe('several judgements', () => {
  const bad = of({ from: rest(2.1) })
  const good = of({ from: rest(3.7) })
  const warm = of({ act: 'board', temperature_C: 41 })
  const plain = (told: Partial<Told> = {}) => of({ act: 'look', ...told })
  const keys = (found: readonly { readonly key: RuleKey }[]) => found.map(({ key }) => key)

  it('set one pack of several aside, and the rest is never a plain go', () => {
    const settled = settle([plain(), plain({ from: rest(2.1) })], [])
    expect(plain().verdict).toBe('go')
    expect(settled.verdict).toBe('go with care')
    expect(keys(settled.aside)).toEqual(['deadCell'])
    expect(keys(settled.found)).not.toContain('deadCell')
    expect(reasonsOf(settled)).toEqual(['deadCell'])
    expect(settled.packs).toEqual([plover, plover])
  })

  it('may deal with no pack at all', () => {
    expect(settle([judge(situationOf({ act: 'look' }, around))], []).packs).toEqual([])
  })

  it('are a go where none is set aside and none says more', () => {
    expect(settle([plain()], [])).toMatchObject({ verdict: 'go', aside: [] })
  })

  it('refuse where every pack is refused, and where a deed is', () => {
    expect(settle([bad, bad], [])).toMatchObject({ verdict: 'do not charge', aside: [] })
    expect(settle([good], [bad])).toMatchObject({ verdict: 'do not charge', aside: [] })
    expect(reasonsOf(settle([good], [bad]))).toContain('deadCell')
  })

  it('say of one set aside only the first of its reasons', () => {
    const twice = of({ from: rest(2.1), temperature_C: 50 })
    expect(keys(twice.found.filter(({ weight }) => weight === 'refuse'))).toEqual(['deadCell', 'tooHot'])
    expect(keys(settle([good, twice], []).aside)).toEqual(['deadCell'])
  })

  it('say each rule once for each pack, a note once for all, and the first that found it', () => {
    const wren = { ...plover, chemistry: lihv }
    const cold = of({ temperature_C: 7 })
    const others = of({ temperature_C: 7, pack: wren })
    const { found } = settle([cold, of({ temperature_C: 8 }), others], [])
    expect(found.filter(({ key }) => key === 'cold').map(({ met }) => met)).toEqual([7, 7])
    expect(found.filter(({ key }) => key === 'looked')).toHaveLength(1)
    expect(found[0]?.weight).toBe('care')
  })

  it('give what must be known first as a reason, and nothing lighter', () => {
    const settled = settle([of({ temperature_C: 7 }, { doubts: ['chemistryAssumed'] }), warm], [])
    expect(reasonsOf(settled)).toContain('chemistryAssumed')
    expect(reasonsOf(settled)).not.toContain('cold')
  })
})
