// What passenger aircraft take: the watt-hours of a pack, and the class that the air rules put it in.

import { published } from '../things/cited.ts'
import type { Pack } from '../things/pack.ts'

export interface AirLimits {
  /** Carried without asking up to here, in Wh. */
  readonly free_Wh: number
  /** Carried with the airline's approval up to here, in Wh; above this not by passengers. */
  readonly approved_Wh: number
  /** Spares of the approved class that one passenger may carry. */
  readonly approvedSpares: number
}

export const airLimits = published<AirLimits>(
  { free_Wh: 100, approved_Wh: 160, approvedSpares: 2 },
  'FAA PackSafe; 49 CFR 175.10(a)(18); ICAO Technical Instructions Part 8 and IATA DGR 2.3',
)

export type AirClass = 'cabin' | 'with approval' | 'not by passengers'

/** Nominal volts times capacity: what a label gives as watt-hours and the air rules count. */
export const labelEnergy_Wh = ({ chemistry, series, capacity_Ah }: Pack): number =>
  chemistry.nominal_V.value * series * capacity_Ah

/** How a pack of `energy_Wh` may fly. */
export function airClass(energy_Wh: number): AirClass {
  const { free_Wh, approved_Wh } = airLimits.value
  // A product of label numbers that is 100 must not fail for its last binary digit.
  const within = (limit_Wh: number) => energy_Wh <= limit_Wh + 1e-9
  return within(free_Wh) ? 'cabin' : within(approved_Wh) ? 'with approval' : 'not by passengers'
}
