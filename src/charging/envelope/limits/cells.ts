// Limits on what the cells themselves show: how low, how high, how far apart.

import { practice } from '../../situation/rule.ts'
import type { Act } from '../../situation/situation.ts'
import { above, always, below, cells, type Limits, ofCell } from './row.ts'

const judging: readonly Act[] = ['charge', 'board', 'look', 'drain']
const chargerParts = 'precharge thresholds of charger parts, cell datasheets'
const apart = practice('cells of one pack apart')

/** Most pressing first within a weight. */
export const cellsLimits = {
  deadCell: below(
    'refuse',
    always,
    'lowest_V',
    'perCell',
    ofCell(c => c.damage_V),
    cells,
  ),
  overCharged: above(
    'refuse',
    always,
    'highest_V',
    'perCell',
    ofCell(c => ({ ...c.full_V, value: c.full_V.value + 0.05 })),
    'tolerance of IEC 62133-2 (from memory)',
  ),
  overFull: above(
    'refuse',
    ['charge', 'board', 'look'],
    'highest_V',
    'perCell',
    ofCell(c => c.full_V),
    cells,
  ),
  cellsFarApart: above('refuse', judging, 'spread_V', 'voltage', 0.2, apart),
  slowStart: below(
    'must',
    ['charge', 'look'],
    'lowest_V',
    'perCell',
    ofCell(c => c.precharge_V),
    chargerParts,
  ),
  cellsApart: above('must', judging, 'spread_V', 'voltage', 0.1, apart),
  cellsUneven: above('care', judging, 'spread_V', 'voltage', 0.03, apart),
  belowFloor: below(
    'note',
    ['charge', 'look'],
    'lowest_V',
    'perCell',
    ofCell(c => c.restFloor_V),
    practice('pilots land above it'),
  ),
} as const satisfies Limits
