// What a community's moderators have tightened. Never looser than the chemistry: the core takes the stricter.

import type { ChargeEnd } from './charge-end.ts'
import type { ChemistryName } from './chemistry.ts'

export interface HouseLimits {
  readonly maxRate_C?: Partial<Record<ChemistryName, number>>
  /** The highest volts of a charge, per cell. */
  readonly fullPerCell_V?: Partial<Record<ChemistryName, number>>
  readonly storagePerCell_V?: Partial<Record<ChemistryName, number>>
  /** Floor under load for a battery used as a source, per cell; the higher of this and the chemistry's holds. */
  readonly sourceFloorPerCell_V?: Partial<Record<ChemistryName, number>>
  /** No charge of cells colder than this. */
  readonly coldest_C?: number
  /** Charge cells that have a gentle full voltage (Li-ion) to that. */
  readonly gentleLiIon?: boolean
  /** Where the chargers end, or after how long by their clocks, in s. */
  readonly chargeEnd?: ChargeEnd | number
}

export const noHouseLimits: HouseLimits = {}
