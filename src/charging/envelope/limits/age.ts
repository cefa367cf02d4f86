// Limits on the age of a pack, as the resistance of its cells shows it.

import { ages, oddCell } from '../../upkeep/health.ts'
import { above, type Limits, reached, saidBy } from './row.ts'

const from = saidBy(ages)

/** Most pressing first within a weight. */
export const ageLimits = {
  wornOut: above('refuse', ['look'], 'ageTimes', from, reached(ages.value.worn)),
  tired: above('care', ['look'], 'ageTimes', from, reached(ages.value.tired)),
  oddCell: above('care', ['look'], 'oddTimes', saidBy(oddCell), oddCell.value),
} as const satisfies Limits
