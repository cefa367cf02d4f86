// How long a field session takes to plan: a field bag proven best beside a mixed-integer solver, and a club's whole bench.

import type { Hookup, Session } from '../../src/charging/plan/model.ts'
import { solveSession } from '../../src/charging/plan/solve.ts'
import { programmeOf } from '../outside/session-programme.ts'
import { highs } from '../support/highs.ts'
import type { Row } from './benches.ts'

/** The same numbers at every run: a linear congruential generator. */
function randomFrom(seed: number): (low: number, high: number) => number {
  let state = seed
  return (low, high) => {
    state = (state * 1_103_515_245 + 12_345) % 2 ** 31
    return low + Math.floor((state / 2 ** 31) * (high - low + 1))
  }
}

/** Packs all different, ports of different speed with a full and a half share of two sources; nine tenths of the energy. */
function sessionOf(packs: number, ports: number, seed: number): Session {
  const random = randomFrom(seed)
  const bag = Array.from({ length: packs }, () => ({ duration_min: random(35, 80), energy_Wh: random(3, 20) }))
  const waysOf = (): Hookup[] => {
    const speed = random(60, 160) / 100
    return [0, 1].flatMap(source =>
      [1, 0.5].map(share => ({
        source,
        power_W: 30 * speed * share,
        jobs: bag.map(({ duration_min, energy_Wh }) => ({
          duration_min: Math.round((duration_min * (0.7 / share + 0.3)) / speed),
          energy_Wh,
        })),
      })),
    )
  }
  const all_Wh = bag.reduce((sum, { energy_Wh }) => sum + energy_Wh, 0)
  return {
    counts: bag.map(() => 1),
    ports: Array.from({ length: ports }, waysOf),
    sources: [0, 1].map(() => ({ power_W: 10 * ports, energy_Wh: Math.floor(all_Wh * 0.45) })),
    deadline_min: Number.POSITIVE_INFINITY,
    wanted: packs,
  }
}

const timed = <T>(run: () => T): { result: T; took_ms: number } => {
  const start = performance.now()
  const result = run()
  return { result, took_ms: performance.now() - start }
}

const runs = 5

export default async function bench(): Promise<Row[]> {
  const field = Array.from({ length: runs }, (_, seed) => sessionOf(12, 3, seed + 1))
  solveSession(field[0] as Session)
  const ours_ms = field.map(session => timed(() => solveSession(session)).took_ms)
  // The solver takes from seconds to minutes, so it gets one of them.
  const [first] = field as [Session]
  const theirs_ms = timed(() => highs.solve(programmeOf(first).text, { mip_rel_gap: 0, mip_abs_gap: 0.4 })).took_ms
  const large = Array.from({ length: runs }, (_, seed) => timed(() => solveSession(sessionOf(60, 6, seed + 1))))
  const gaps = large.map(({ result }) => ({
    ready: result.bound.ready - result.ready,
    wait: result.bound.ready > result.ready ? 0 : result.wait_min / result.bound.wait_min - 1,
  }))
  const most = (values: readonly number[]) => Math.max(...values)
  return [
    {
      name: '12 packs on 3 ports, two sources, proven best (slowest of 5)',
      value: `${most(ours_ms).toFixed(0)} ms`,
      ratio: `the first by HiGHS: ${theirs_ms.toFixed(0)} ms, ${(theirs_ms / (ours_ms[0] as number)).toFixed(0)} times as long`,
    },
    {
      name: '60 packs on 6 ports, two sources, with its bound (slowest of 5)',
      value: `${most(large.map(({ took_ms }) => took_ms)).toFixed(0)} ms`,
      ratio: `at most ${most(gaps.map(({ ready }) => ready))} packs and ${(most(gaps.map(({ wait }) => wait)) * 100).toFixed(1)} % waiting from the bound`,
    },
  ]
}
