// For questions about volts per cell, where the chemistry alone will do.

import { Problem } from '../../src/assistant/problem.ts'
import type { ChemistryName } from '../../src/charging/chemistry.ts'
import type { Pack } from '../../src/charging/pack.ts'

/** The pack, or one cell of the chemistry at any capacity. Throws a Problem where neither is named. */
export function packOrCell(
  pack: Pack | undefined,
  chemistry: ChemistryName | undefined,
  example: string,
): Pack {
  if (pack) return pack
  if (chemistry) return { chemistry, series: 1, parallel: 1, capacity_Ah: 1 }
  throw new Problem({
    what: 'I need the pack or its chemistry: the same volts mean other charges.',
    expected: 'pack: cells, capacity and chemistry, or chemistry: LiPo, LiHV, Li-ion or LiFe',
    example,
  })
}
