// What there is to choose from: shares of a source, hookups side by side, and packs out of a bag.

import { expect, test } from 'vitest'
import { combinationCount, combinationsOf, hasPower } from '../../../../src/charging/plan/combinations.ts'
import type { Hookup, Session } from '../../../../src/charging/plan/model.ts'
import { multisetsOf, splitCount } from '../../../../src/charging/plan/multisets.ts'
import { sharesOf } from '../../../../src/charging/plan/shares.ts'
import { endless, free, hookup, job, session } from './paper.ts'

test.each<readonly [what: string, power_W: number, demands_W: readonly number[], port: number, shares_W: number[]]>([
  ['all of it where that is enough for all', 30, [20, 10], 0, [30]],
  ['a half, or what the other leaves', 30, [20, 20], 0, [10, 15, 30]],
  ['thirds too, and what either or both leave', 60, [40, 30, 20], 0, [10, 20, 30, 40, 60]],
  ['of another port', 60, [40, 30, 20], 2, [20, 30, 60]],
  ['a port that draws nothing takes no part', 30, [20, 0, 20], 0, [10, 15, 30]],
  ['2 % is worth giving', 100, [60, 98], 0, [2, 50, 100]],
  ['less is not', 100, [60, 99], 0, [50, 100]],
])('a share of a source: %s', (_, power_W, demands_W, port, shares_W) =>
  expect(sharesOf(power_W, demands_W, port)).toEqual(shares_W),
)

test('choices of two packs of one kind and one of another', () => {
  const choices = multisetsOf([2, 1])
  expect(choices).toMatchObject({ count: 6, unit: [1, 3], size: [0, 1, 2, 1, 2, 3] })
  expect(choices.of).toEqual([
    [0, 0],
    [1, 0],
    [2, 0],
    [0, 1],
    [1, 1],
    [2, 1],
  ])
  expect([...choices.partsOf(2)]).toEqual([0, 1, 2])
  expect([...choices.partsOf(4)]).toEqual([0, 1, 3, 4])
  expect(splitCount([2, 1])).toBe([1, 2, 3, 2, 4, 6].reduce((sum, parts) => sum + parts))
})

const fast = hookup([job(20)], { power_W: 20 })
const slow = hookup([job(40)])
const dry = { power_W: endless, energy_Wh: 100 }

test.each<readonly [what: string, hookups: readonly (Hookup | undefined)[], is: boolean]>([
  ['30 W for 20 and 10 W', [fast, slow], true],
  ['30 W for 20 and 20 W', [fast, fast], false],
  ['30 W for 20 W and nothing', [fast, undefined], true],
  ['10 W of another source', [fast, { ...slow, source: 1 }], true],
  ['20 W of a source that has 10 W', [{ ...fast, source: 1 }], false],
])('power: %s: %s', (_, hookups, is) => {
  const sources = [
    { power_W: 30, energy_Wh: endless },
    { power_W: 10, energy_Wh: endless },
  ]
  expect(hasPower(session({ sources }), hookups)).toBe(is)
})

const ways = [fast, slow]
/** It charges what nobody else does. */
const other = hookup([undefined, job(50)])

test.each<readonly [what: string, parts: Partial<Session>, combinations: readonly (Hookup | undefined)[][]]>([
  ['the fast one where nothing is scarce', { ports: [ways] }, [[fast]]],
  [
    'the fast ones as far as the power goes',
    { ports: [ways, ways], sources: [{ power_W: 30, energy_Wh: endless }] },
    [[fast, slow]],
  ],
  ['each where the source may run dry', { ports: [ways], sources: [dry] }, [[fast], [slow], [undefined]]],
  [
    'alike ports not told apart',
    { ports: [[fast], [fast]], sources: [dry] },
    [
      [fast, fast],
      [fast, undefined],
      [undefined, fast],
      [undefined, undefined],
    ],
  ],
  ['as fast by another way', { ports: [[fast, { ...fast }]] }, [[fast], [fast]]],
  [
    'one for each kind',
    { counts: [1, 1], ports: [[hookup([job(20), undefined]), other]] },
    [[hookup([job(20), undefined])], [other]],
  ],
  [
    'the slow one of a source that lasts beside the fast one of one that does not',
    { ports: [[fast, { ...slow, source: 1 }]], sources: [dry, free] },
    [[fast], [{ ...slow, source: 1 }]],
  ],
])('hookups: %s', (_, parts, combinations) => expect(combinationsOf(session(parts))).toEqual(combinations))

test('hookups of twins are not told apart', () => {
  const twins = session({ ports: [ways, ways], sources: [dry] })
  expect(combinationCount(twins)).toBe(9)
  expect(combinationsOf(twins)).toEqual([
    [fast, fast],
    [fast, slow],
    [fast, undefined],
    [slow, slow],
    [slow, undefined],
    [undefined, undefined],
  ])
  expect(combinationsOf(session({ ports: [ways, ways, ways], sources: [dry] }))).toHaveLength(10)
  expect(combinationsOf(session({ ports: [ways, [...ways]], sources: [dry] }))).toHaveLength(9)
})
