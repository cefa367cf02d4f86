// How far a house may go with each of its limits: stricter than the chemistry, never looser.

import type { Chemistry, Cited } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'

export type ChemistryRule = 'maxRate_C' | 'fullPerCell_V' | 'storagePerCell_V' | 'sourceFloorPerCell_V'

/** A slower charge than this takes a day and keeps nobody safer. */
const slowestRate_C = practice(0.1, 'slow charges are at 0.1C')

/** The values that a house may set, both ends included: C for the rate, V per cell for the others. */
export function houseRange(
  rule: ChemistryRule,
  { highestRate_C, restFloor_V, loadFloor_V, storage_V, full_V }: Chemistry,
): { lowest: Cited; highest: Cited } {
  switch (rule) {
    case 'maxRate_C':
      return { lowest: slowestRate_C, highest: highestRate_C }
    case 'fullPerCell_V':
      return { lowest: storage_V, highest: full_V }
    case 'storagePerCell_V':
      return { lowest: restFloor_V, highest: storage_V }
    case 'sourceFloorPerCell_V':
      return { lowest: loadFloor_V, highest: storage_V }
  }
}

/** What a house may set as the coldest, in °C: from where every chemistry may be charged to a warm room. */
export const coldestRange_C = { lowest: 0, highest: 20 } as const
