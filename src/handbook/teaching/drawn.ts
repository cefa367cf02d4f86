// Packs as people have them, drawn by chance, and the setting of a pack of a lesson.

import { judge } from '../../charging/envelope/judge.ts'
import { type Setting, settingFor } from '../../charging/setting/setting.ts'
import { situationOf, type Told } from '../../charging/situation/situation.ts'
import { chemistries } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import type { HouseLimits } from '../../charging/things/house-limits.ts'
import type { Pack } from '../../charging/things/pack.ts'
import type { Draw } from './draw.ts'

const capacities_mAh = [450, 650, 850, 1000, 1300, 1500, 1800, 2200, 3000, 4000, 5000] as const
export const packOf = (parts: Pick<Pack, 'chemistry' | 'series' | 'capacity_Ah'>): Pack => ({ parallel: 1, ...parts })
export const drawnChemistry = (draw: Draw): Chemistry => draw.pick(chemistries)
export const drawnCapacity_Ah = (draw: Draw): number => draw.pick(capacities_mAh) / 1000
export const drawnPack = (draw: Draw, chemistry: Chemistry = drawnChemistry(draw)): Pack =>
  packOf({ chemistry, series: draw.int(2, 6), capacity_Ah: drawnCapacity_Ah(draw) })

/** The same judgement that an answer rests on: no lesson teaches what would be refused. */
export const judged = (told: Told, house: HouseLimits) => judge(situationOf(told, { house, dangers: [], doubts: [] }))

/** Undefined where a charge of it is refused. */
export function settingOf(told: Omit<Told, 'act'>, house: HouseLimits): Setting | undefined {
  const { permit } = judged({ ...told, act: 'charge' }, house)
  return permit && settingFor(permit)
}
