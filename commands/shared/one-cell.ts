// For questions about volts per cell, where the chemistry alone will do.

import type { Pack } from '../../src/charging/things/pack.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { CellType } from '../../src/language/things/cell-type.ts'
import { packOrItsKind, packWanted } from './problems.words.ts'

/** The pack, or the cells at any capacity, one where it is not said how many. Throws a Problem where neither is named. */
export function packOrCell(pack: Pack | undefined, cells: CellType | undefined, example: string): Pack {
  if (pack) return pack
  if (cells) return { chemistry: cells.chemistry, series: cells.series ?? 1, parallel: 1, capacity_Ah: 1 }
  throw new Problem({ what: packWanted, expected: packOrItsKind, example })
}
