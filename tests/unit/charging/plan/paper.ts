// Small sessions whose best plan is worked out on paper.

import type { Hookup, Job, Session } from '../../../../src/charging/plan/model.ts'

export const endless = Number.POSITIVE_INFINITY
export const free = { power_W: endless, energy_Wh: endless }

export const job = (duration_min: number, energy_Wh = 0): Job => ({ duration_min, energy_Wh })

/** On the first source with 10 W. */
export const hookup = (jobs: readonly (Job | undefined)[], parts: Partial<Hookup> = {}): Hookup => ({
  source: 0,
  power_W: 10,
  jobs,
  ...parts,
})

/** One pack that takes 10 min, on one port that may take all that it wants. */
export const session = (parts: Partial<Session>): Session => ({
  counts: [1],
  ports: [[hookup([job(10)])]],
  sources: [free],
  deadline_min: endless,
  wanted: 1,
  ...parts,
})
