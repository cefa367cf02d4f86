// What every session plan must keep, whoever made it, worked out anew from the numbers of the session.

import { expect } from 'vitest'
import type { Session, SessionPlan } from '../../src/charging/plan/model.ts'

/** Fails where a port charges what it cannot, too late or too many, or a source gives more than it has. */
export function expectSound(session: Session, plan: SessionPlan): void {
  const { counts, ports, sources, deadline_min, wanted } = session
  const ends: number[] = []
  const used = counts.map(() => 0)
  const drawn_W = sources.map(() => 0)
  const taken_Wh = sources.map(() => 0)
  plan.order.forEach((kinds, port) => {
    const hookup = plan.hookups[port]
    if (!hookup) {
      expect(kinds).toEqual([])
      return
    }
    expect(ports[port]).toContain(hookup)
    drawn_W[hookup.source] = (drawn_W[hookup.source] as number) + hookup.power_W
    let end_min = 0
    for (const kind of kinds) {
      const job = hookup.jobs[kind]
      if (!job) throw new Error(`port ${port} charges kind ${kind}, which it cannot`)
      end_min += job.duration_min
      expect(end_min).toBeLessThanOrEqual(deadline_min)
      ends.push(end_min)
      used[kind] = (used[kind] as number) + 1
      taken_Wh[hookup.source] = (taken_Wh[hookup.source] as number) + job.energy_Wh
    }
  })
  for (const [source, { power_W, energy_Wh }] of sources.entries()) {
    expect(drawn_W[source]).toBeLessThanOrEqual(power_W * (1 + 1e-9))
    expect(taken_Wh[source]).toBeLessThanOrEqual(energy_Wh + 1e-6)
  }
  for (const [kind, count] of counts.entries()) expect(used[kind]).toBeLessThanOrEqual(count)
  expect(plan.ready).toBe(ends.length)
  expect(plan.ready).toBeLessThanOrEqual(wanted)
  expect(plan.wait_min).toBe(ends.reduce((sum, end_min) => sum + end_min, 0))
}
