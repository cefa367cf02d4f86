// Limits on a charger that was checked with a meter: how far off it is, and what it took the cells to.

import { faultyFrom_V, trimTolerance_V } from '../../upkeep/trim.ts'
import { above, cells, charging, type Limits, ofCell } from './row.ts'

/** Above full, in V: beyond it a cell is a danger by itself. */
const hazard_V = 0.05
const fullAnd = (more_V: number) => ofCell(c => ({ ...c.full_V, value: Number((c.full_V.value + more_V).toFixed(6)) }))

const tolerance = `${trimTolerance_V.standing}: ${trimTolerance_V.source}`

/** Most pressing first within a weight. */
export const meterLimits = {
  gotHazard: above('refuse', charging, 'got_V', 'perCell', fullAnd(hazard_V), 'tolerance of IEC 62133-2 (from memory)'),
  gotTooMuch: above('refuse', charging, 'got_V', 'perCell', fullAnd(trimTolerance_V.value), tolerance),
  chargerFaulty: above(
    'refuse',
    charging,
    'offBy_V',
    'voltage',
    faultyFrom_V.value,
    `${faultyFrom_V.standing}: ${faultyFrom_V.source}`,
  ),
  gotAboveFull: above('care', charging, 'got_V', 'perCell', fullAnd(0), cells),
  chargerOff: above('care', charging, 'offBy_V', 'voltage', trimTolerance_V.value, tolerance),
  aboveWish: above('care', charging, 'aboveWish_V', 'voltage', 0.005, 'the wish that was told'),
} as const satisfies Limits
