// A charge at the current that was asked for, or at the advised one: its times, and what it takes from its source.

import type { Charge, ChargeRequest } from '../simulation/charge.ts'
import { drawsOf, supplyOf } from '../simulation/supply-run.ts'
import { termsOf } from '../simulation/terms.ts'
import type { Permit } from '../situation/permit.ts'
import type { Planned } from '../situation/situation.ts'
import type { ChargeEnd } from '../things/charge-end.ts'
import type { Band } from '../things/chemistry.ts'
import { learnedOf } from '../things/learned.ts'
import type { State } from '../things/level.ts'
import { goalOf, startOf } from '../things/level.ts'
import { type Balancing, balancingOf, bandWith, chargeWith, isUneven } from './balancing.ts'
import { type ChargeTimes, chargeTimeBand } from './band.ts'
import { type Setting, settingFor } from './setting.ts'
import { type ChargerStops, chargerStops } from './stops.ts'

/** Where a charge ends; by the club where none of them is told, else at a tenth of the set current. */
interface Ends {
  /** Current at which the charge ends, in A. */
  readonly termination_A?: number | undefined
  /** What that goes by. */
  readonly end?: ChargeEnd | undefined
  /** In place of both, for a charger that stops by its clock, in s. */
  readonly timer_s?: number | undefined
}

interface Details extends Ends {
  /** Current set on the charger, in A; the advised one when absent. */
  readonly current_A?: number
  readonly measuredCapacity_Ah?: number
  /** Of the charger's balancer, in A; the charger's own when absent. */
  readonly balance_A?: number | undefined
}

export interface TimedCharge extends ChargeTimes {
  /** What would be advised. */
  readonly setting: Setting
  readonly from: State
  readonly current_A: number
  readonly rate_C: number
  /** Where its charger ends, as far as that is known, and the current there, in A. */
  readonly end: ChargeEnd | undefined
  readonly end_A: number
  readonly isEndTold: boolean
  /** Where a clock ends it instead, in s. */
  readonly timer_s: number | undefined
  /** What its balancer does at the end, where it was told how far the cells lie apart and no clock ends it. */
  readonly balancing: Balancing | undefined
  /** Most that the charger takes from its source, in A; absent where no source is known. */
  readonly input_A: number | undefined
  /** How often the source carries this charge whole; absent where it is not drained. */
  readonly carried: number | undefined
  /** What its label alone would say of the time, where its own charges say more. */
  readonly byLabel_s: Band | undefined
  /** To be set on the charger, for when it does not see the end. */
  readonly stops: ChargerStops
}

/** Too little power of charger or source only bends the charge to constant power. Without a start it is landed. */
export function timedCharge(permit: Permit, details: Details = {}): TimedCharge {
  const { pack, source, charger, apart_V } = permit.situation
  const setting = settingFor(permit)
  const { current_A = setting.current_A, balance_A = charger?.balance_A, measuredCapacity_Ah, ...told } = details
  const power_W = Math.min(...setting.limits.map(limit => limit.power_W ?? Number.POSITIVE_INFINITY))
  const asSet = chargeOf(permit, setting)
  // Told here it stands for what the club says of it, whatever that goes by.
  const isEndTold = Object.values(told).some(end => end !== undefined)
  const { end, timer_s, termination_A }: Ends = isEndTold ? told : asSet
  const request = {
    ...asSet,
    end,
    timer_s,
    termination_A,
    measuredCapacity_Ah,
    current_A,
    power_W: Number.isFinite(power_W) ? power_W : undefined,
  }
  const times = chargeTimeBand(request)
  const isBalanced = isUneven(apart_V) && pack.series > 1 && timer_s === undefined
  const balancing = isBalanced ? balancingOf(pack, request.from, apart_V, balance_A) : undefined
  const time_s = balancing ? bandWith(times.time_s, balancing) : times.time_s
  const { feed, efficiency } = setting
  return {
    ...times,
    charge: balancing ? chargeWith(times.charge, balancing) : times.charge,
    time_s,
    balancing,
    byLabel_s: request.learned && chargeTimeBand({ ...request, learned: undefined }).time_s,
    setting,
    from: request.from,
    current_A,
    end,
    end_A: termsOf(request).termination_A,
    timer_s,
    isEndTold: termination_A !== undefined,
    rate_C: current_A / pack.capacity_Ah,
    input_A: feed?.lowest_V && times.charge.peakPower_W / efficiency / feed.lowest_V,
    carried: source && carriedBy(permit, setting, times.charge),
    stops: chargerStops(pack, time_s.high),
  }
}

/** What it decides of what may be done: judged again once it is computed. */
export const plannedOf = ({
  current_A,
  input_A,
  time_s,
  warmest_C,
}: Pick<TimedCharge, 'current_A' | 'input_A' | 'time_s' | 'warmest_C'>): Planned => ({
  set_A: current_A,
  input_A,
  takes_s: time_s.high,
  warmest_C,
})

/** The charge that a setting gives: its current and cutoff, from where the pack stands to where it is to go. */
export function chargeOf({ situation }: Permit, { current_A, cutoff }: Setting): ChargeRequest {
  const { pack, house, from, to, temperature_C, learned } = situation
  const goal = goalOf(to ?? { kind: 'named', name: 'full' }, pack.chemistry, house)
  const cutoffPerCell_V = cutoff.perCell_V
  const { chargeEnd } = house
  return {
    pack,
    current_A,
    from: startOf(from ?? { kind: 'named', name: 'empty' }, pack.chemistry, house),
    target: goal.kind === 'soc' ? { ...goal, cutoffPerCell_V } : { kind: 'voltage', perCell_V: cutoffPerCell_V },
    temperature_C,
    end: typeof chargeEnd === 'number' ? undefined : chargeEnd,
    timer_s: typeof chargeEnd === 'number' ? chargeEnd : undefined,
    learned: learnedOf(learned, pack),
  }
}

function carriedBy({ situation }: Permit, { feed, efficiency }: Setting, charge: Charge): number | undefined {
  const { source, pack } = situation
  return source && supplyOf(source, feed?.store, drawsOf(charge, pack.series, efficiency), situation).most
}
