// Limits on a charger that was checked with a meter: how far off it is, and what it took the cells to.

import { faultyFrom_V, trimTolerance_V } from '../../upkeep/trim.ts'
import { above, cells, charging, type Limits, ofCell, saidBy } from './row.ts'

/** Above full, in V: beyond it a cell is a danger by itself. */
const hazard_V = 0.05
const tolerance = saidBy(trimTolerance_V)

/** Most pressing first within a weight. */
export const meterLimits = {
  gotHazard: above('refuse', charging, 'got_V', 'tolerance of IEC 62133-2 (from memory)', ofCell('full_V', hazard_V)),
  gotTooMuch: above('refuse', charging, 'got_V', tolerance, ofCell('full_V', trimTolerance_V.value)),
  chargerFaulty: above('refuse', charging, 'offBy_V', saidBy(faultyFrom_V), faultyFrom_V.value),
  gotAboveFull: above('care', charging, 'got_V', cells, ofCell('full_V')),
  chargerOff: above('care', charging, 'offBy_V', tolerance, trimTolerance_V.value),
  aboveWish: above('care', charging, 'aboveWish_V', 'the wish that was told', 0.005),
} as const satisfies Limits
