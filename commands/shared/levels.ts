// What "full", "storage" and a missing start mean for a pack in this house.

import { fullVoltage_V } from '../../src/charging/setting/old-cutoff.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { State, Target } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { type Level, stateOf, targetOf } from '../../src/language/things/state.ts'

export interface Levels {
  readonly from: State
  readonly target: Target
  /** Resting voltage of a cell at the start, in V, where the question gave it. */
  readonly restPerCell_V?: number
}

/** Without a start the pack is taken to be flown down to its floor, the longest proper charge; without an end to go to full. */
export function levelsOf(pack: Pack, house: HouseLimits, from?: Level, to?: Level): Levels {
  const chemistry = pack.chemistry
  const named = {
    full_V: fullVoltage_V(chemistry, house),
    storage_V: house.storagePerCell_V?.[chemistry.name] ?? chemistry.storage_V.value,
  }
  return {
    from: from ? stateOf(from, named) : { kind: 'rest', perCell_V: chemistry.restFloor_V.value },
    target: targetOf(to ?? { kind: 'named', name: 'full' }, named),
    ...(from?.kind === 'rest' && { restPerCell_V: from.perCell_V }),
  }
}
