// How near the model comes to measured charges, and how often its bands hold: by family, and what was kept from the fit.

import { type ChargeTimes, chargeTimeBand } from '../../../src/charging/setting/band.ts'
import type { ChargeRequest } from '../../../src/charging/simulation/charge.ts'
import type { Band } from '../../../src/charging/things/chemistry.ts'
import { socAt } from '../../../src/charging/things/curve.ts'
import type { ChargeNote } from '../../../src/charging/upkeep/charge-note.ts'
import { learn } from '../../../src/charging/upkeep/learn.ts'
import { type Dataset, type DatasetName, datasets } from './datasets.ts'
import { type ChargeRun, cellOfRun, chargeRuns } from './runs.ts'

/** What somebody who asks about a run could know of it. */
export type Knowledge = 'inputs' | 'label' | 'rest'

/**
 * The request for a measured run. A run that ends below the full voltage has its capacity measured up to there; the
 * rest up to full comes from the chemistry's curve.
 */
export function requestOf(run: ChargeRun, knows: Knowledge = 'inputs'): ChargeRequest {
  const { chemistry } = datasets[run.dataset]
  const share = socAt(chemistry, run.cutoff_V)
  const isMeasured = knows === 'inputs'
  return {
    pack: {
      chemistry,
      series: 1,
      parallel: 1,
      capacity_Ah: run.nameplate_Ah,
      ...(isMeasured && run.reading_ohm !== undefined && { cellResistance_ohm: run.reading_ohm }),
    },
    ...(isMeasured && { measuredCapacity_Ah: run.measured_Ah / share }),
    current_A: run.current_A,
    from:
      knows === 'rest' && run.rest_V !== undefined
        ? { kind: 'rest', perCell_V: run.rest_V }
        : { kind: 'soc', soc: run.start * share },
    target: { kind: 'voltage', perCell_V: run.cutoff_V },
    termination_A: run.termination_A,
    ...(run.ambient_C !== undefined && { temperature_C: run.ambient_C }),
  }
}

/**
 * Charges whose start was told by volts at rest: most rested near empty, where a curve is steep, cells differ most and
 * some had not rested out, so the times are harder to tell than from the middle.
 */
export const restedRuns = chargeRuns.filter(({ rest_V }) => rest_V !== undefined)

/** One time of one run. */
export interface Told {
  readonly family: string
  readonly id: string
  /** Relative error of the central time. */
  readonly error: number
  readonly isInside: boolean
  /** Half of the band over the measured time. */
  readonly halfWidth: number
}

export const toldOf = (
  family: string,
  id: string,
  measured_s: number,
  central_s: number,
  { low, high }: Band,
): Told => ({
  family,
  id,
  error: central_s / measured_s - 1,
  isInside: measured_s >= low && measured_s <= high,
  halfWidth: (high - low) / 2 / measured_s,
})

export interface Times {
  readonly total: readonly Told[]
  readonly cutoff: readonly Told[]
}

export type Estimate = (run: ChargeRun) => ChargeTimes

export function timesOf(runs: readonly ChargeRun[], estimate: Estimate): Times {
  const all = runs.map(run => ({ run, ...estimate(run) }))
  return {
    total: all.map(({ run, charge, time_s }) =>
      toldOf(run.dataset, run.id, run.timeToTermination_s, charge.duration_s, time_s),
    ),
    cutoff: all.flatMap(({ run, charge, bands }) =>
      run.timeToCutoff_s
        ? [toldOf(run.dataset, run.id, run.timeToCutoff_s, charge.timeToCutoff_s, bands().timeToCutoff_s)]
        : [],
    ),
  }
}

export const timesBy = (runs: readonly ChargeRun[], knows: Knowledge): Times =>
  timesOf(runs, run => chargeTimeBand(requestOf(run, knows)))

export interface Figures {
  readonly runs: number
  readonly median: number
  readonly bias: number
  /** The error that 95 of 100 stay within. */
  readonly most: number
  readonly worst: number
  /** Share of the runs whose measured time lies in the band. */
  readonly inside: number
  readonly halfWidth: number
}

export function figuresOf(times: readonly Told[]): Figures {
  const sizes = times.map(({ error }) => Math.abs(error)).toSorted((a, b) => a - b)
  const at = (share: number) => sizes[Math.min(sizes.length - 1, Math.ceil(share * sizes.length) - 1)] ?? Number.NaN
  const mean = (of: (time: Told) => number) => times.reduce((sum, time) => sum + of(time), 0) / times.length
  return {
    runs: times.length,
    median: at(0.5),
    bias: mean(({ error }) => error),
    most: at(0.95),
    worst: at(1),
    inside: mean(({ isInside }) => Number(isInside)),
    halfWidth: mean(({ halfWidth }) => halfWidth),
  }
}

export const isHeldOut = (family: string): boolean => (datasets[family as DatasetName] as Dataset).heldOut === true

export const familiesIn = (times: readonly Told[]): ReadonlyMap<string, readonly Told[]> =>
  Map.groupBy(times, ({ family }) => family)

/** A run as its pilot would have noted it. */
export function noteOf(run: ChargeRun): ChargeNote {
  const { current_A, from, target, termination_A, temperature_C } = requestOf(run, 'label')
  if (target.kind !== 'voltage') throw new Error('a run to a voltage')
  return {
    charge_Ah: run.putBack_Ah,
    from,
    to: { kind: 'rest', perCell_V: target.perCell_V },
    current_A,
    termination_A,
    duration_s: run.timeToTermination_s,
    timeToCutoff_s: run.timeToCutoff_s,
    temperature_C,
  }
}

/** Between charges that follow each other so much of the capacity goes at most; else years lie between. */
const sameAge = 0.03

/** Each run with the ones of its cell before it, `least` or more. */
export function followingRuns(runs: readonly ChargeRun[], least: number): ReadonlyMap<ChargeRun, readonly ChargeRun[]> {
  const following = new Map<ChargeRun, readonly ChargeRun[]>()
  for (const run of runs) {
    const before = runs
      .slice(0, runs.indexOf(run))
      .filter(one => cellOfRun(one) === cellOfRun(run) && Math.abs(one.measured_Ah / run.measured_Ah - 1) < sameAge)
    if (before.length >= least) following.set(run, before)
  }
  return following
}

/** The times of runs by what those before them told, and nothing else but the label. */
export function timesByLog(runs: readonly ChargeRun[], least: number): Times {
  const following = followingRuns(runs, least)
  return timesOf([...following.keys()], run => {
    const request = requestOf(run, 'label')
    return chargeTimeBand({ ...request, learned: learn(request.pack, (following.get(run) ?? []).map(noteOf)) })
  })
}
