// Session plans: sound whatever the session, exact for a field bag, and within their bound beyond it.

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { boundOf } from '../../../../src/charging/plan/bound.ts'
import { isBetter, type Job, type Session, type Worth } from '../../../../src/charging/plan/model.ts'
import { solveSession } from '../../../../src/charging/plan/solve.ts'
import { cases } from '../../../support/cases.ts'
import { expectSound } from '../../../support/check-plan.ts'
import { someSession } from '../../../support/sessions.ts'

const small = someSession({ mostKinds: 5, mostOfAKind: 3, mostPacks: 8, mostPorts: 3 })
const large = someSession({ mostKinds: 40, mostOfAKind: 12, mostPacks: 60, mostPorts: 6 })
const endless = Number.POSITIVE_INFINITY
const worth = ({ ready, wait_min }: Worth): Worth => ({ ready, wait_min })

describe('a session plan', () => {
  it('is sound and proven best where the bag is small', () => {
    fc.assert(
      fc.property(small, session => {
        const plan = solveSession(session)
        expectSound(session, plan)
        expect(plan.bound).toEqual(worth(plan))
      }),
      cases(1000),
    )
  })

  it('is sound and within its bound where the bag is large', () => {
    fc.assert(
      fc.property(large, session => {
        const plan = solveSession(session)
        expectSound(session, plan)
        expect(isBetter(plan, plan.bound)).toBe(false)
      }),
      cases(60),
    )
  })
})

describe('the bound', () => {
  it('is never worse than the best plan, however poor the plan it starts from', () => {
    fc.assert(
      fc.property(small, fc.integer({ min: 0, max: 500 }), (session, lost_min) => {
        const best = worth(solveSession(session))
        const poor = { ready: best.ready, wait_min: best.wait_min + lost_min }
        expect(isBetter(best, boundOf(session, session.ports, poor, 200))).toBe(false)
      }),
      cases(1000),
    )
  })
})

const job = (duration_min: number, energy_Wh = 0): Job => ({ duration_min, energy_Wh })
const session = (parts: Partial<Session>): Session => ({
  counts: [1],
  ports: [[{ source: 0, power_W: 10, jobs: [job(10)] }]],
  sources: [{ power_W: endless, energy_Wh: endless }],
  deadline_min: endless,
  wanted: 1,
  ...parts,
})

describe('by hand', () => {
  it('charges the shortest first on one port: 10, 30 and 60 min make 100 min of waiting', () => {
    const plan = solveSession(
      session({
        counts: [1, 1, 1],
        ports: [[{ source: 0, power_W: 10, jobs: [job(30), job(10), job(20)] }]],
        wanted: 3,
      }),
    )
    expect(plan.order).toEqual([[1, 2, 0]])
    expect(worth(plan)).toEqual({ ready: 3, wait_min: 100 })
  })

  it('shares a source of 30 W between two ports of 20 W: one at 20 W and one at 10 W', () => {
    const ways = [
      { source: 0, power_W: 20, jobs: [job(20)] },
      { source: 0, power_W: 10, jobs: [job(40)] },
    ]
    const plan = solveSession(
      session({ counts: [3], ports: [ways, ways], sources: [{ power_W: 30, energy_Wh: endless }], wanted: 3 }),
    )
    // 20 and 40 min at 20 W, 40 min at 10 W.
    expect(worth(plan)).toEqual({ ready: 3, wait_min: 100 })
  })

  it('stops at the floor of the source: 25 Wh carry two packs of 10 Wh', () => {
    const plan = solveSession(
      session({
        counts: [4],
        ports: [[{ source: 0, power_W: 10, jobs: [job(10, 10)] }]],
        sources: [{ power_W: endless, energy_Wh: 25 }],
        wanted: 4,
      }),
    )
    expect(plan.ready).toBe(2)
  })

  it('charges no more than wanted, and nothing where nothing can be charged', () => {
    expect(solveSession(session({ counts: [5], wanted: 2 })).ready).toBe(2)
    expect(worth(solveSession(session({ ports: [[]] })))).toEqual({ ready: 0, wait_min: 0 })
    expect(worth(solveSession(session({ counts: [], wanted: 0 })))).toEqual({ ready: 0, wait_min: 0 })
  })
})
