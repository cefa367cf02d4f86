// A field session in numbers: packs by kind, the ways to run each port, what the sources hold, and a plan.

/** One charge of one pack, on the safe side: the longest time and the most energy that it may need. */
export interface Job {
  /** With the minute to connect the pack, in whole minutes. */
  readonly duration_min: number
  /** Taken from the source, in Wh. */
  readonly energy_Wh: number
}

/** One way to run a port for the whole session: on which source, and with which share of its power. */
export interface Hookup {
  /** Index in `Session.sources`. */
  readonly source: number
  /** Most that the port draws from the source, in W. */
  readonly power_W: number
  /** By kind of pack; undefined where the kind cannot be charged this way. */
  readonly jobs: readonly (Job | undefined)[]
}

export interface SourceBudget {
  /** Most power at any moment, in W; Infinity where unlimited. */
  readonly power_W: number
  /** Energy that it gives before its floor, in Wh; Infinity where it is not drained. */
  readonly energy_Wh: number
}

export interface Session {
  /** How many packs there are of each kind. */
  readonly counts: readonly number[]
  /** For each port the ways to run it; a port may also stay unused. */
  readonly ports: readonly (readonly Hookup[])[]
  readonly sources: readonly SourceBudget[]
  /** Every charge ends by then, in min; Infinity where nothing presses. */
  readonly deadline_min: number
  /** More packs than this need not be ready. */
  readonly wanted: number
}

/** How each port is run; undefined where it stays unused. */
export type Hookups = readonly (Hookup | undefined)[]

/** What counts, in this order: as many packs ready as can be, then the least sum of the times at which they are. */
export interface Worth {
  readonly ready: number
  readonly wait_min: number
}

export interface Deal extends Worth {
  /** For each port the kinds of the packs it charges, one after the other from the start without a break. */
  readonly order: readonly (readonly number[])[]
}

export interface SessionPlan extends Deal {
  readonly hookups: Hookups
  /** No plan is better than this; equal to the plan's own worth where it is proven best. */
  readonly bound: Worth
}

/** In min; Infinity where there is no such charge. */
export const lasts_min = (job: Job | undefined): number => job?.duration_min ?? Number.POSITIVE_INFINITY

export function isBetter(a: Worth, b: Worth): boolean {
  return a.ready > b.ready || (a.ready === b.ready && a.wait_min < b.wait_min)
}

/** Energies are sums of rounded numbers: this much more than the budget is none. */
export const energyTolerance_Wh = 1e-9

/** Energy that a pack of each kind counts with on each source: the most among the ports that hang on it, in Wh. */
export function energiesOn(session: Session, hookups: Hookups): number[][] {
  return session.sources.map((_, source) =>
    session.counts.map((_, kind) =>
      Math.max(0, ...hookups.map(hookup => (hookup?.source === source ? energyOf(hookup, kind) : 0))),
    ),
  )
}

const energyOf = (hookup: Hookup, kind: number): number => hookup.jobs[kind]?.energy_Wh ?? 0
