// The storage voltage by itself, where it is not said where the pack stands.

import type { Answer } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { storageVoltage_V, storeWithin_s } from '../../src/charging/upkeep/storage.ts'
import type { Show } from '../../src/ground/show.ts'
import { figuresIn } from '../shared/figure.ts'
import { cite } from '../shared/working.ts'

export function storageLevel(pack: Pack, house: HouseLimits, show: Show): Answer {
  const { name, storage_V: own_V } = pack.chemistry
  const storage_V = storageVoltage_V(pack, house)
  const inAll = pack.series > 1 ? ` (${show.voltage(storage_V * pack.series)} for ${pack.series}S)` : ''
  const whose = storage_V === own_V.value ? cite(own_V) : 'the rules of this house'
  const figure = figuresIn(show)
  return {
    headline: `Store ${name} at ${show.perCell(storage_V)} per cell${inAll}. Say the pack and where it stands, as in "from 4.2V per cell", and I work out which way, how much and how long.`,
    figures: [
      figure.perCell('storagePerCell', 'storage per cell', storage_V),
      ...(pack.series > 1
        ? [figure.voltage('storagePack', 'storage of the pack', storage_V * pack.series)]
        : []),
    ],
    working: [`Storage: ${show.perCell(storage_V)} per cell (${whose}).`, `By when: ${cite(storeWithin_s)}.`],
    cautions: cautionsFor({ pack }),
  }
}
