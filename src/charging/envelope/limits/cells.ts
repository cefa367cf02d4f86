// Limits on what the cells themselves show: how low, how high, how far apart.

import { type Spreads, spreads } from '../../setting/balancing.ts'
import { practice } from '../../situation/rule.ts'
import type { Act } from '../../situation/situation.ts'
import { spreadShare } from '../../upkeep/cell-spread.ts'
import { flat_V } from '../../upkeep/lookalike.ts'
import type { Known } from './facts.ts'
import { above, always, below, cells, guiding, type Limits, leaving, ofCell } from './row.ts'

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
  deadCell: leaving('revive', below('refuse', always, 'lowest_V', cells, ofCell('damage_V'))),
  overCharged: leaving(
    'overfull',
    above('refuse', always, 'highest_V', 'tolerance of IEC 62133-2 (from memory)', ofCell('full_V', 0.05)),
  ),
  overFull: above('refuse', ['charge', 'board', 'look'], 'highest_V', cells, ofCell('full_V')),
  cellsFarApart: leaving('cellsHurt', above('refuse', judging, 'spread_V', apart, spreadOf('farApart_V'))),
  slowStart: guiding(below('must', ['charge', 'look'], 'lowest_V', chargerParts, ofCell('precharge_V'))),
  cellsApart: guiding(above('must', judging, 'spread_V', apart, spreadOf('apart_V'))),
  cellsUneven: above('care', judging, 'spread_V', apart, spreadOf('uneven_V')),
  overFullElsewhere: above('must', ['drain', 'store', 'carry'], 'highest_V', cells, ofCell('full_V')),
  looksFlat: below(
    'must',
    judging,
    'besideFlat_V',
    practice('cells that all read the same near the rest of another type are of it, or empty'),
    flat_V,
  ),
  lowCell: below('care', ['look'], 'lowest_V', practice('pilots land above it'), ofCell('restFloor_V')),
  belowFloor: below('note', ['charge'], 'lowest_V', practice('pilots land above it'), ofCell('restFloor_V')),
} as const satisfies Limits
