// What a charger does to one cell for a request: its currents, its cutoff and when it ends.

import { type ChargeEnd, endCurrent_A } from '../things/charge-end.ts'
import type { ChargeRequest } from './charge.ts'

/** Precharge current over set current: the share that charge-management chips use (Microchip MCP73831, Maxim MAX8819). */
const prechargeShare = 0.1
/** No charger sees so small a share of its set current: a lower termination counts as this. */
const leastTerminationShare = 1e-4

/** How a charger differs from what it was told. */
interface Differing {
  readonly current_A: number
  readonly end: ChargeEnd | undefined
  readonly cutoffError_V: number
}

/** The terms of a request, by a charger that keeps to it where no other is given. */
export function termsOf(request: ChargeRequest, differing?: Differing) {
  const { pack, target } = request
  const { current_A, end, cutoffError_V } = differing ?? { ...request, cutoffError_V: 0 }
  const byCurrent_A = request.termination_A ?? endCurrent_A(end ?? 'tenth', current_A, pack.capacity_Ah)
  const end_A = request.timer_s === undefined ? byCurrent_A : 0
  const cutoff_V = (target.kind === 'voltage' ? target.perCell_V : target.cutoffPerCell_V) + cutoffError_V
  const power_W = (request.power_W ?? Number.POSITIVE_INFINITY) / pack.series
  const precharge_V = Math.min(pack.chemistry.precharge_V.value, cutoff_V)
  return {
    current_A,
    cutoff_V,
    /** Up to which the charge starts with the precharge current. */
    precharge_V,
    precharge_A: Math.min(current_A * prechargeShare, power_W / precharge_V),
    /** Infinity where nothing bounds it. */
    power_W,
    termination_A: Math.max(end_A, current_A * leastTerminationShare),
    /** At the cutoff it halves its current, and holds no volts. */
    stepsDown: end === 'steps' && request.termination_A === undefined && request.timer_s === undefined,
    /** By its clock; Infinity where the current ends it. */
    end_s: request.timer_s ?? Number.POSITIVE_INFINITY,
    /** Infinity for a charge to a voltage. */
    endSoc: target.kind === 'soc' ? target.soc : Number.POSITIVE_INFINITY,
  }
}

/** The currents of one that steps down, from the first below that at which the cutoff was reached. */
export function stepsOf({ current_A, power_W, cutoff_V, termination_A }: ChargerTerms): readonly number[] {
  const steps_A: number[] = []
  for (let step_A = Math.min(current_A, power_W / cutoff_V) / 2; step_A >= termination_A; step_A /= 2)
    steps_A.push(step_A)
  return steps_A
}

export type ChargerTerms = ReturnType<typeof termsOf>
