// What the charges noted of a saved pack say: capacity and resistance over time, and how it has aged.

import { required, session } from '../../src/assistant/command.ts'
import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { typicalTraits } from '../../src/charging/simulation/traits.ts'
import type { Learned } from '../../src/charging/things/learned.ts'
import { capacityLeft } from '../../src/charging/upkeep/age-signs.ts'
import { fadeTo } from '../../src/charging/upkeep/fade.ts'
import { learnedFrom } from '../../src/charging/upkeep/learned-once.ts'
import { logShown, tellsOfPack } from '../../src/charging/upkeep/log-shown.ts'
import { judgeLog } from '../../src/charging/upkeep/pack-log.ts'
import { loggedPack } from './logged-pack.ts'

export const logShow = session({
  name: 'log show',
  takes: { name: required(packNameKind) },
  examples: ['log show name: wren'],
  situations: async ({ name }, context) => {
    const { pack, charges } = await loggedPack(name, context)
    return tellsOfPack(pack, judgeLog(pack, charges), charges) ? [{ act: 'look', pack }] : []
  },
  compute: async ([permit], { name }, context) => {
    const { pack, charges } = await loggedPack(name, context)
    const log = judgeLog(pack, charges)
    const held = charges.flatMap(({ at }, index) => {
      const reading = log.readings[index]?.capacity
      return reading ? [{ at, capacity_Ah: reading.capacity_Ah }] : []
    })
    const learned = learnedFrom(pack, charges)
    const holds = learned && holdsBy(learned)
    return { pack, charges, log, holds, fade: fadeTo(held, capacityLeft.value.retire * pack.capacity_Ah), permit }
  },
  deeds: ({ pack, charges, log, permit }) => (permit ? [{ ...logShown(pack, log, charges), permit }] : []),
  figures: ({ pack, charges, holds, log: { capacity, resistance } }) => {
    if (charges.length === 0) return []
    return [
      figure.count('charges', charges.length),
      figure.capacity('learnedCapacity', holds?.capacity_Ah, holds?.band_Ah),
      figure.capacity('capacity', capacity?.now_Ah, capacity?.band_Ah),
      figure.percent('ofLabel', capacity && capacity.now_Ah / pack.capacity_Ah),
      figure.capacity('firstCapacity', capacity?.first_Ah),
      figure.resistance('cellResistance25C', resistance?.now_ohm),
      figure.resistance('firstResistance25C', resistance?.first_ohm),
    ]
  },
})

/** By all its charges together, between nine of ten of the cells that it may be made of. */
function holdsBy({ pack: { capacity_Ah }, traits }: Learned) {
  const held_Ah = traits.map(({ share }) => share * capacity_Ah).toSorted((a, b) => a - b)
  const [low = 0, high = 0] = [held_Ah[3], held_Ah.at(-4)]
  return { capacity_Ah: typicalTraits(traits).share * capacity_Ah, band_Ah: { low, high } }
}
