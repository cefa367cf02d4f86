// The time of a charge with the shortest and longest that real packs of the kind may need.

import type { Band, Charge, ChargeRequest } from './charge.ts'
import { chemistries } from './chemistries.ts'
import { simulateCharge } from './simulate.ts'

export interface ChargeTimes {
  readonly charge: Charge
  readonly time_s: Band
  readonly timeToCutoff_s: Band
}

export function chargeTimeBand(request: ChargeRequest): ChargeTimes {
  const charge = simulateCharge(request)
  const chemistry = chemistries[request.pack.chemistry]
  const spread = chemistry.capacitySpread.value
  const around = (time_s: number): Band => ({ low: time_s * (1 - spread), high: time_s * (1 + spread) })
  return { charge, time_s: around(charge.duration_s), timeToCutoff_s: around(charge.timeToCutoff_s) }
}
