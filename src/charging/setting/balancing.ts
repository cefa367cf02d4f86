// How far apart cells may lie, how gently those that lie apart are charged, and how long the higher ones are bled down.

import type { Charge, CurvePoint } from '../simulation/charge.ts'
import type { Band } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'
import { restingVoltage, socAt } from '../things/curve.ts'
import type { State } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import type { Provenance } from './limit.ts'

export interface Spreads {
  readonly uneven_V: number
  readonly apart_V: number
  readonly farApart_V: number
}

/** At rest; the end of a balanced charge is judged by half of them. */
export const spreads = practice<Spreads>(
  { uneven_V: 0.03, apart_V: 0.1, farApart_V: 0.2 },
  'cells within 0.03 V are balanced, to 0.10 V the charger balances them, beyond that they are balanced first, beyond 0.20 V the pack is not charged; half of that at the end of a charge',
)

/** Whether the balancer has work with them. */
export const isUneven = (apart_V: number | undefined): apart_V is number =>
  apart_V !== undefined && apart_V > spreads.value.uneven_V

/** The most that cells so far apart are charged with, in C; undefined where they are balanced. */
export function evening(
  apart_V: number | undefined,
  usual_C: number,
): { rate_C: number; from: Provenance } | undefined {
  if (!isUneven(apart_V)) return undefined
  return { rate_C: apart_V > spreads.value.apart_V ? usual_C / 5 : 0.5, from: gently }
}
const gently: Provenance = {
  source: 'cells that lie apart are balanced, at half of the capacity an hour or a fifth of the usual current',
  standing: 'common practice',
}

/** Where no balance current is told; and the most that small chargers have. */
export const usualBalance_A = practice(0.1, 'small chargers bleed 0.1 to 0.3 A from a cell')
const mostBalance_A = 0.3

/** The lowest and the highest cell of a pack at rest, in V. */
export interface Between {
  readonly lowest_V: number
  readonly highest_V: number
}

/** Bleeding every cell down to the lowest, in s: at least, as balancers pause to measure. */
export function balanceTime_s(
  { chemistry, capacity_Ah }: Pack,
  { lowest_V, highest_V }: Between,
  balance_A: number,
): number {
  return ((socAt(chemistry, highest_V) - socAt(chemistry, lowest_V)) * capacity_Ah * 3600) / balance_A
}

/**
 * Of cells that lie `apart_V` about where the pack stands at rest. Likely and at the latest the charger balances when
 * all else is done; where no balance current is told it is the usual one, and at the earliest the most that is usual.
 */
export function balancingOf(pack: Pack, from: State, apart_V: number, told_A: number | undefined) {
  const middle_V = from.kind === 'rest' ? from.perCell_V : restingVoltage(pack.chemistry, from.soc)
  const between = { lowest_V: middle_V - apart_V / 2, highest_V: middle_V + apart_V / 2 }
  const balance_A = told_A ?? usualBalance_A.value
  return {
    ...between,
    balance_A,
    duration_s: balanceTime_s(pack, between, balance_A),
    least_s: balanceTime_s(pack, between, told_A ?? mostBalance_A),
  }
}

export type Balancing = ReturnType<typeof balancingOf>

/** A charge with its cells balanced once it is done: nothing goes in by then. */
export function chargeWith(charge: Charge, { duration_s }: Balancing): Charge {
  const end = { ...(charge.curve.at(-1) as CurvePoint), current_A: 0 }
  return {
    ...charge,
    duration_s: charge.duration_s + duration_s,
    stages: [...charge.stages, { kind: 'balancing', duration_s, charge_Ah: 0, energy_Wh: 0 }],
    curve: [...charge.curve, end, { ...end, time_s: end.time_s + duration_s }],
  }
}

/** The band of a charge with that: at the earliest a charger balances all along, and is held up only by more than the charge takes. */
export const bandWith = ({ low, high }: Band, { duration_s, least_s }: Balancing): Band => ({
  low: Math.max(low, least_s),
  high: high + duration_s,
})
