// A charge at a current that somebody asked for: its times, and whether that current is one to advise.

import type { Charge, ChargeRequest } from '../simulation/charge.ts'
import { drawsOf, supplyOf } from '../simulation/supply-run.ts'
import type { State } from '../things/level.ts'
import { type ChargeTimes, chargeTimeBand } from './band.ts'
import { type Care, isHurried } from './fitness.ts'
import type { Limit } from './limit.ts'
import type { Setting, SettingRequest } from './old-setting.ts'

export interface TimedChargeRequest extends SettingRequest {
  readonly from: State
  /** Current set on the charger, in A. */
  readonly current_A: number
  readonly termination_A?: number
  readonly measuredCapacity_Ah?: number
}

export interface TimedCharge extends ChargeTimes {
  readonly verdict: 'go' | 'go with care' | 'do not charge'
  readonly cares: readonly Care[]
  readonly current_A: number
  readonly rate_C: number
  /** The limit that the current is above, where it is. */
  readonly above?: Limit
  /** The source would be drained below its floor before the charge has ended. */
  readonly sourceRunsOut: boolean
}

/**
 * Simulates the charge at the current that was asked for. Too little power of charger or source only bends it
 * to constant power. A current above a limit of the cells, the house or the temperature turns the verdict, as
 * does a source that would run out; the times then stand as an estimate of what must not be done.
 */
export function timedCharge(request: TimedChargeRequest, setting: Setting): TimedCharge {
  const { current_A, pack, termination_A, measuredCapacity_Ah } = request
  const power_W = Math.min(...setting.limits.map(limit => limit.power_W ?? Number.POSITIVE_INFINITY))
  const times = chargeTimeBand({
    ...chargeOf(request, setting),
    current_A,
    termination_A,
    ...(Number.isFinite(power_W) && { power_W }),
    measuredCapacity_Ah,
  })
  const above = limitExceeded(setting.limits, current_A)
  const cares: Care[] = setting.cares.filter(care => care !== 'above the wanted current')
  if (isHurried(current_A, setting.wanted_A)) cares.push('above the wanted current')
  if (setting.limits.some(({ kind, value_A }) => kind === 'source' && current_A > value_A * (1 + 1e-9))) {
    cares.push('more than the source gives')
  }
  const sourceRunsOut = runsOut(request, setting, times.charge)
  return {
    ...times,
    verdict: sourceRunsOut ? 'do not charge' : verdictOn(setting.limits, current_A, above, cares),
    sourceRunsOut,
    cares,
    current_A,
    rate_C: current_A / pack.capacity_Ah,
    above,
  }
}

/** The charge that `setting` gives: its current and cutoff, from a start to the target that was asked for. */
export function chargeOf(
  { pack, target, temperature_C, from }: SettingRequest & { readonly from: State },
  { current_A, cutoff }: Setting,
): ChargeRequest {
  const cutoffPerCell_V = cutoff.perCell_V
  return {
    pack,
    current_A,
    from,
    target:
      target?.kind === 'soc'
        ? { ...target, cutoffPerCell_V }
        : { kind: 'voltage', perCell_V: cutoffPerCell_V },
    temperature_C,
  }
}

function runsOut(
  { source, pack }: TimedChargeRequest,
  { feed, efficiency }: Setting,
  charge: Charge,
): boolean {
  if (!source) return false
  return supplyOf(source, feed?.store, drawsOf(charge, pack.series, efficiency)).most === 0
}

function limitExceeded(limits: readonly Limit[], current_A: number): Limit | undefined {
  return limits.find(({ power_W, value_A }) => power_W === undefined && current_A > value_A * (1 + 1e-9))
}

/** The chemistry's limit is for packs whose label says no more; a label that does is believed, with care. */
function verdictOn(
  limits: readonly Limit[],
  current_A: number,
  above: Limit | undefined,
  cares: readonly Care[],
): TimedCharge['verdict'] {
  if (!above) return cares.length > 0 ? 'go with care' : 'go'
  const labelled = limits.some(({ kind }) => kind === 'label')
  const others = limits.filter(({ kind }) => kind !== 'chemistry')
  return labelled && limitExceeded(others, current_A) === undefined ? 'go with care' : 'do not charge'
}
