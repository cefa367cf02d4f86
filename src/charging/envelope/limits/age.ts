// Limits on the age of a pack, as the resistance of its cells shows it.

import { ages, oddCell } from '../../upkeep/health.ts'
import { above, type Limits } from './row.ts'

const from = `${ages.standing}: ${ages.source}`
/** The number itself breaks the limit too. */
const reached = (times: number): number => times - 1e-9

/** Most pressing first within a weight. */
export const ageLimits = {
  wornOut: above('refuse', ['look'], 'ageTimes', 'times', reached(ages.value.worn), from),
  tired: above('care', ['look'], 'ageTimes', 'times', reached(ages.value.tired), from),
  oddCell: above('care', ['look'], 'oddTimes', 'times', oddCell.value, `${oddCell.standing}: ${oddCell.source}`),
} as const satisfies Limits
