// What no plan can beat, where counting on paper gives it, and large sessions that reach it.

import { expect, test } from 'vitest'
import { boundOf } from '../../../../src/charging/plan/bound.ts'
import type { Session } from '../../../../src/charging/plan/model.ts'
import { solveSession } from '../../../../src/charging/plan/solve.ts'
import { endless, free, hookup, job, session } from './paper.ts'

const port = [hookup([job(10, 10)])]
const other = [hookup([job(10, 10)], { source: 1 })]
const held = (energy_Wh: number) => ({ power_W: endless, energy_Wh })

/** The session, what some plan reaches, and what none beats. */
type Case = readonly [parts: Partial<Session>, reached: readonly [number, number], bound: readonly [number, number]]

const table: Readonly<Record<string, Case>> = {
  'no more than wanted': [{ counts: [3], ports: [port], wanted: 1 }, [1, 10], [1, 10]],
  'no more than there are': [{ counts: [1], ports: [port, port], deadline_min: 10, wanted: 3 }, [1, 10], [1, 10]],
  'in line on one outlet': [{ counts: [3], ports: [port], wanted: 3 }, [3, 60], [3, 60]],
  'side by side on two': [{ counts: [2], ports: [port, port], wanted: 2 }, [2, 20], [2, 20]],
  'what ends by the deadline': [{ counts: [3], ports: [port], deadline_min: 20, wanted: 3 }, [2, 30], [2, 30]],
  'on each outlet by itself': [{ counts: [3], ports: [port, port], deadline_min: 15, wanted: 3 }, [2, 20], [2, 20]],
  'what the source holds': [{ counts: [3], ports: [port], sources: [held(29)], wanted: 3 }, [2, 30], [2, 30]],
  'to the last': [{ counts: [3], ports: [port], sources: [held(30)], wanted: 3 }, [3, 60], [3, 60]],
  'each source by itself': [
    { counts: [3], ports: [port, other], sources: [held(15), held(15)], wanted: 3 },
    [2, 20],
    [2, 20],
  ],
  'a pack that nobody can charge': [
    { counts: [1, 1], ports: [[hookup([job(10), undefined])]], wanted: 2 },
    [1, 10],
    [1, 10],
  ],
  'the shortest charge first': [
    { counts: [1, 1], ports: [[hookup([job(30), job(10)])]], deadline_min: 29, wanted: 2 },
    [1, 10],
    [1, 10],
  ],
  'the thriftiest first': [
    { counts: [1, 1], ports: [[hookup([job(30, 30), job(30, 10)])]], sources: [held(29)], wanted: 2 },
    [1, 30],
    [1, 30],
  ],
  'by the faster of two ways': [
    { ports: [[hookup([job(20)]), hookup([job(10)])]], deadline_min: 15 },
    [1, 10],
    [1, 10],
  ],
  'by the thriftier of two ways': [
    { ports: [[hookup([job(10, 20)]), hookup([job(10, 10)])]], sources: [held(15)] },
    [1, 10],
    [1, 10],
  ],
  'nothing where no outlet is': [{ ports: [] }, [0, 0], [0, 0]],
}

test.each(Object.entries(table))('bound: %s', (_, [parts, [ready, wait_min], [mostReady, least_min]]) => {
  const small = session({ sources: [free, free], ...parts })
  expect(boundOf(small, small.ports, { ready, wait_min }, 600)).toEqual({ ready: mostReady, wait_min: least_min })
})

test('a plan that leaves packs out may be beaten by any wait', () => {
  const three = session({ counts: [3], ports: [port], wanted: 3 })
  expect(boundOf(three, three.ports, { ready: 2, wait_min: 30 }, 600)).toEqual({ ready: 3, wait_min: 0 })
})

test('the bound closes on the best wait from a poor plan', () => {
  const three = session({ counts: [3], ports: [port], wanted: 3 })
  const { wait_min } = boundOf(three, three.ports, { ready: 3, wait_min: 80 }, 600)
  expect(wait_min).toBeLessThanOrEqual(60)
  expect(wait_min).toBeGreaterThan(57)
})

test('thirteen packs all different, too many for a proof, still go shortest first', () => {
  const jobs = [7, 1, 13, 4, 10, 2, 9, 5, 12, 3, 8, 6, 11].map(duration_min => job(duration_min))
  const plan = solveSession(session({ counts: jobs.map(() => 1), ports: [[hookup(jobs)]], wanted: 13 }))
  // 13 × 1 + 12 × 2 + … + 1 × 13
  expect(plan).toMatchObject({ ready: 13, wait_min: 455 })
  expect(plan.bound.wait_min).toBeLessThanOrEqual(455)
  expect(plan.bound.wait_min).toBeGreaterThan(440)
})

test('six outlets that cannot all be fast: four fast ones have six packs ready first', () => {
  const outlet = () => [hookup([job(20)], { power_W: 5 }), hookup([job(10)])]
  const ports = Array.from({ length: 6 }, outlet)
  const plan = solveSession(session({ counts: [6], ports, sources: [{ power_W: 45, energy_Wh: endless }], wanted: 6 }))
  // Four after 10 min, and two more after 20 min wherever they hang.
  expect(plan).toMatchObject({ ready: 6, wait_min: 80 })
})
