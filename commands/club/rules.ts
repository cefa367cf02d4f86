// The rules of this club on one card: the limits of each chemistry, worked out from the rows that judge a charge.

import { service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { knownOf } from '../../src/charging/envelope/limits/facts.ts'
import { limits } from '../../src/charging/envelope/limits/index.ts'
import type { Limit } from '../../src/charging/envelope/limits/row.ts'
import { situationOf } from '../../src/charging/situation/situation.ts'
import { sourceFloor_V } from '../../src/charging/things/battery-store.ts'
import { chemistries } from '../../src/charging/things/chemistries.ts'
import type { Chemistry } from '../../src/charging/things/chemistry.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { storageVoltage_V } from '../../src/charging/things/level.ts'
import { inKey } from './house-show.ts'

export const fullKey = ({ name }: Chemistry): string => `full${inKey(name)}`

export const rules = service({
  name: 'rules',
  shelf: 'club rules',
  takes: {},
  examples: ['rules'],
  run: (_, { house }) => ({ cells: chemistries.map(chemistry => cellLimits(chemistry, house)) }),
  figures: ({ cells }) => cells.map(({ chemistry, full_V }) => figure.perCell(fullKey(chemistry), full_V)),
})

function cellLimits(chemistry: Chemistry, house: HouseLimits) {
  // Of one ampere-hour, so that amps are rates.
  const pack = { chemistry, series: 1, parallel: 1, capacity_Ah: 1 }
  const known = knownOf(situationOf({ act: 'charge', pack }, { house, dangers: [], doubts: [] }), {})
  const of = (limit: Limit): number => limit.than(known) as number
  return {
    chemistry,
    full_V: known.bounds?.cutoff.perCell_V ?? of(limits.cutoffAboveFull),
    storage_V: storageVoltage_V(chemistry, house),
    /** At rest after a flight. */
    landing_V: of(limits.belowFloor),
    /** Below it a cell is retired. */
    dead_V: of(limits.deadCell),
    /** Under load, where the pack feeds others. */
    source_V: sourceFloor_V(pack, house),
    most_C: of(limits.currentTooHigh),
    coldest_C: of(limits.tooCold),
    hottest_C: of(limits.tooHot),
  }
}
