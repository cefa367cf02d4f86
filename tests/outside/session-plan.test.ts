// Our session plan against a mixed-integer programme of the same session, solved by HiGHS 1.15 (University of Edinburgh).

import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import type { Session, Worth } from '../../src/charging/plan/model.ts'
import { solveSession } from '../../src/charging/plan/solve.ts'
import { cases } from '../support/cases.ts'
import { highs } from '../support/highs.ts'
import { type SessionSize, someSession } from '../support/sessions.ts'
import { programmeOf, worthOf } from './session-programme.ts'

function solveByProgramme(session: Session): Worth {
  const { text, readyWorth } = programmeOf(session)
  const solution = highs.solve(text, { mip_rel_gap: 0, mip_abs_gap: 0.4 })
  if (solution.Status !== 'Optimal') throw new Error(`the programme ended as ${solution.Status}`)
  return worthOf(solution.ObjectiveValue, readyWorth)
}

const worth = ({ ready, wait_min }: Worth): Worth => ({ ready, wait_min })

function compare(size: SessionSize, count: number): void {
  fc.assert(
    fc.property(someSession(size), session => {
      const plan = solveSession(session)
      expect(worth(plan)).toEqual(solveByProgramme(session))
      expect(plan.bound).toEqual(worth(plan))
    }),
    { ...cases(count), seed: 20 },
  )
}

describe('the exact plan', () => {
  it('is as good as the programme of small sessions', () => {
    compare({ mostKinds: 4, mostOfAKind: 3, mostPacks: 5, mostPorts: 3 }, 150)
  })

  it('is as good as the programme of a whole field bag', () => {
    compare({ mostKinds: 12, mostOfAKind: 4, mostPacks: 12, mostPorts: 3 }, 12)
  })
})
