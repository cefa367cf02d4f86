// Deals of packs to ports: the first deal, the mended one and the exact one, beside what is best on paper.

import { expect, test } from 'vitest'
import { dealExactly } from '../../../../src/charging/plan/exact.ts'
import { dealGreedily, dealRoughly } from '../../../../src/charging/plan/greedy.ts'
import { type Hookup, isBetter, type Session } from '../../../../src/charging/plan/model.ts'
import { multisetsOf } from '../../../../src/charging/plan/multisets.ts'
import { endless, free, hookup, job, session } from './paper.ts'

type Dealt = readonly [ready: number, wait_min: number, ...order: number[][]]

/** The first deal follows where the mended one finds better. */
interface Case {
  readonly parts: Partial<Session>
  readonly hookups: readonly (Hookup | undefined)[]
  readonly best: Dealt
  readonly rough?: Dealt
}

const held = (energy_Wh: number) => ({ power_W: endless, energy_Wh })
/** Soon and thirsty, or late and thrifty. */
const thirsty = hookup([job(10, 20), job(20, 10)])

const table: Readonly<Record<string, Case>> = {
  'the shortest first': {
    parts: { counts: [1, 1, 1], wanted: 3 },
    hookups: [hookup([job(30), job(10), job(20)])],
    best: [3, 100, [1, 2, 0]],
  },
  'two of three to the outlet that is more than twice as fast': {
    parts: { counts: [3], wanted: 3 },
    hookups: [hookup([job(10)]), hookup([job(25)])],
    best: [3, 55, [0, 0], [0]],
  },
  'none to an outlet that is off, or that cannot charge it': {
    parts: { counts: [2], wanted: 2 },
    hookups: [undefined, hookup([undefined]), hookup([job(10)])],
    best: [2, 30, [], [], [0, 0]],
  },
  'only as many as wanted': { parts: { counts: [3], wanted: 1 }, hookups: [hookup([job(10)])], best: [1, 10, [0]] },
  'none where no outlet is on': { parts: {}, hookups: [undefined], best: [0, 0, []] },
  'as many as end by the deadline itself': {
    parts: { counts: [3], wanted: 3, deadline_min: 20 },
    hookups: [hookup([job(10)])],
    best: [2, 30, [0, 0]],
  },
  'and none that ends a minute later': {
    parts: { counts: [3], wanted: 3, deadline_min: 19 },
    hookups: [hookup([job(10)])],
    best: [1, 10, [0]],
  },
  'as many as the source holds to the last': {
    parts: { counts: [1, 2], wanted: 3, sources: [held(30)] },
    hookups: [thirsty],
    best: [2, 40, [0, 1]],
  },
  'the thrifty ones where it runs dry': {
    parts: { counts: [1, 2], wanted: 3, sources: [held(29)] },
    hookups: [thirsty],
    best: [2, 60, [1, 1]],
  },
  'the soonest one where only one is wanted': {
    parts: { counts: [1, 2], wanted: 1, sources: [held(29)] },
    hookups: [thirsty],
    best: [1, 10, [0]],
  },
  'a pack counts with the most that any outlet on its source takes for it': {
    parts: { counts: [2], wanted: 2, sources: [held(23)] },
    hookups: [hookup([job(10, 10)]), hookup([job(10, 12)])],
    best: [1, 10, [0], []],
  },
  'so that two need twice that': {
    parts: { counts: [2], wanted: 2, sources: [held(24)] },
    hookups: [hookup([job(10, 10)]), hookup([job(10, 12)])],
    best: [2, 20, [0], [0]],
  },
  'but not with what outlets on another source take': {
    parts: { counts: [2], wanted: 2, sources: [held(20), free] },
    hookups: [hookup([job(10, 10)]), hookup([job(50, 12)], { source: 1 })],
    best: [2, 30, [0, 0], []],
  },
  'each source has its own': {
    parts: { counts: [3], wanted: 3, sources: [held(15), held(15)] },
    hookups: [hookup([job(10, 10)]), hookup([job(10, 10)], { source: 1 })],
    best: [2, 20, [0], [0]],
  },
  'a pack moves to where it leaves the way to one that needs it more': {
    parts: { counts: [1, 1], wanted: 2 },
    hookups: [hookup([job(10), job(20)]), hookup([job(11), job(100)])],
    best: [2, 31, [1], [0]],
    rough: [2, 40, [0, 1], []],
  },
  'two packs change places where neither outlet has the time for both': {
    parts: { counts: [1, 1], wanted: 2, deadline_min: 20 },
    hookups: [hookup([job(10), job(12)]), hookup([job(11), job(20)])],
    best: [2, 23, [1], [0]],
    rough: [2, 30, [0], [1]],
  },
  'a pack that nobody charges takes the place of another': {
    parts: { counts: [1, 1, 1], wanted: 2, deadline_min: 21, sources: [held(21)] },
    hookups: [hookup([job(10, 15), job(11, 10), job(10, 11)])],
    best: [2, 31, [2, 1]],
  },
}

test.each(Object.entries(table))('%s', (_, { parts, hookups, best, rough = best }) => {
  const small = session(parts)
  const asDeal = ([ready, wait_min, ...order]: Dealt) => ({ ready, wait_min, order })
  expect(dealExactly(small, hookups, multisetsOf(small.counts))).toEqual(asDeal(best))
  expect(dealGreedily(small, hookups)).toEqual(asDeal(best))
  expect(dealRoughly(small, hookups)).toEqual(asDeal(rough))
})

test('more packs ready are better, and of as many the lesser wait', () => {
  const [a, b] = [
    { ready: 2, wait_min: 40 },
    { ready: 1, wait_min: 10 },
  ]
  expect([isBetter(a, b), isBetter(b, a), isBetter(a, a)]).toEqual([true, false, false])
  expect([isBetter({ ...a, wait_min: 39 }, a), isBetter({ ...a, wait_min: 41 }, a)]).toEqual([true, false])
})
