// What a pack weighs, where nobody put it on a scale.

import { practice } from '../things/cited.ts'
import type { Pack } from '../things/pack.ts'
import { labelEnergy_Wh } from './transport.ts'

/** A pack over its cells: the least for large packs, the most for small ones. */
const besidesCells = practice<readonly [number, number]>(
  [1.1, 1.5],
  'leads, plugs and wrap add a tenth to a large pack, half to a small one',
)

/** Of `count` packs, from their watt-hours, and what cells of its chemistry weigh. */
export function massOf(pack: Pack, count: number) {
  const [least, most] = besidesCells.value
  const cells_kg = (count * labelEnergy_Wh(pack)) / pack.chemistry.energyPerMass_Whkg.value
  return { low_kg: cells_kg * least, high_kg: cells_kg * most }
}

export type Mass = ReturnType<typeof massOf>
