// A charge of the most likely cell, with what nine of ten cells that the pack may be made of would make of it.

import { sumOf } from '../numbers/sum.ts'
import type { ChargeRequest } from '../simulation/charge.ts'
import { checkRequest } from '../simulation/check-request.ts'
import { membersOf, middleMember, traitsOf } from '../simulation/members.ts'
import { quickCharge } from '../simulation/quick-charge.ts'
import { simulateCharge } from '../simulation/simulate.ts'
import type { Band } from '../things/chemistry.ts'

/** Shares of the cells below the two ends of a band. */
const tails = [0.05, 0.95] as const

/**
 * Simulates a charge, and charges in a few steps each of the cells that the pack may be made of (members.ts): the ends
 * of a band are where 5 and 95 in 100 of them lie. What was told of the pack narrows it, and so does a start in percent.
 * A band always holds the most likely figure.
 * @throws RangeError as simulateCharge
 */
export function chargeTimeBand(request: ChargeRequest) {
  checkRequest(request)
  const traits = traitsOf(request)
  const runs = membersOf(request, traits).map(({ cell, law, timeFactor }) => quickCharge(cell, law, timeFactor))
  const charge = simulateCharge(request, sumOf(runs.map(({ warmed_K }) => warmed_K)) / runs.length)
  // From where it is told to stand, in whatever notation: what is judged by it is judged alike.
  const middle = middleMember(request, traits, charge.startSoc)
  const warmest_C = quickCharge(middle.cell, middle.law).warmest_C
  const band = (of: (run: (typeof runs)[number]) => number, likely?: number): Band => {
    const sorted = new Float64Array(runs.map(of)).sort()
    const [low, high] = tails.map(share => quantile(sorted, share)) as [number, number]
    return likely === undefined ? { low, high } : { low: Math.min(low, likely), high: Math.max(high, likely) }
  }
  return {
    charge,
    /** Of the whole charge, in s. */
    time_s: band(run => run.duration_s, charge.duration_s),
    /** Of the middle cell at its warmest, in °C. */
    warmest_C,
    /** Of what few ask for. */
    bands: () => ({
      /** To the end of constant current and power, in s. */
      timeToCutoff_s: band(run => run.timeToCutoff_s, charge.timeToCutoff_s),
      /** Into the pack, in Ah. */
      charge_Ah: band(run => run.charge_Ah, charge.charge_Ah),
      heat_Wh: band(run => run.heat_Wh * request.pack.series, charge.heat_Wh),
      warmest_C: band(run => run.warmest_C),
    }),
  }
}

export type ChargeTimes = ReturnType<typeof chargeTimeBand>

/** The value that a share of the rising `sorted` lies below, each standing for an equal part. */
function quantile(sorted: Float64Array, share: number): number {
  const at = Math.min(sorted.length - 1, Math.max(0, share * sorted.length - 0.5))
  const i = Math.min(sorted.length - 2, Math.floor(at))
  const left = sorted[i] as number
  return left + ((sorted[i + 1] as number) - left) * (at - i)
}
