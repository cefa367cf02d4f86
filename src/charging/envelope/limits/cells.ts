// Limits on what the cells themselves show: how low, how high, how far apart.

import { practice } from '../../situation/rule.ts'
import type { Act } from '../../situation/situation.ts'
import { type Spreads, spreadShare, spreads } from '../../upkeep/cell-spread.ts'
import { flat_V } from '../../upkeep/lookalike.ts'
import type { Known } from './facts.ts'
import { above, always, below, cells, type Limits, ofCell } from './row.ts'

const judging: readonly Act[] = ['charge', 'board', 'look', 'drain']
const chargerParts = 'precharge thresholds of charger parts, cell datasheets'
const apart = practice(spreads.source)

/** The end of a balanced charge is judged more strictly. */
const spreadOf =
  (which: keyof Spreads) =>
  ({ situation: { when } }: Known) =>
    spreads.value[which] * spreadShare(when)

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
  cellsFarApart: above('refuse', judging, 'spread_V', 'voltage', spreadOf('farApart_V'), apart),
  slowStart: below(
    'must',
    ['charge', 'look'],
    'lowest_V',
    'perCell',
    ofCell(c => c.precharge_V),
    chargerParts,
  ),
  cellsApart: above('must', judging, 'spread_V', 'voltage', spreadOf('apart_V'), apart),
  cellsUneven: above('care', judging, 'spread_V', 'voltage', spreadOf('uneven_V'), apart),
  overFullElsewhere: above(
    'must',
    ['drain', 'store', 'carry'],
    'highest_V',
    'perCell',
    ofCell(c => c.full_V),
    cells,
  ),
  looksFlat: below(
    'must',
    judging,
    'besideFlat_V',
    'voltage',
    flat_V,
    practice('cells that all read the same near the rest of another type are of it, or empty'),
  ),
  lowCell: below(
    'care',
    ['look'],
    'lowest_V',
    'perCell',
    ofCell(c => c.restFloor_V),
    practice('pilots land above it'),
  ),
  belowFloor: below(
    'note',
    ['charge'],
    'lowest_V',
    'perCell',
    ofCell(c => c.restFloor_V),
    practice('pilots land above it'),
  ),
} as const satisfies Limits
