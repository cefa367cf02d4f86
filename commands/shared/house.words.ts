// Where a rule of the club, other than one on the current, has made an answer stricter: the reply says so.

import type { Cutoff } from '../../src/charging/setting/bounds.ts'
import type { Situation } from '../../src/charging/situation/situation.ts'
import { fullVoltage_V } from '../../src/charging/things/level.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { isToStorage } from './charging.ts'

/** A sentence for each rule that bound. Limits on the current have lines of their own. */
export function houseWorking(situation: Situation, cutoff: Cutoff, locale: Locale): readonly (Text | undefined)[] {
  return [storageBound(situation, locale), fullBound(situation, cutoff, locale), floorBound(situation, locale)]
}

function storageBound({ pack, to, house }: Situation, { say, show }: Locale): Text | undefined {
  const storage_V = pack && house.storagePerCell_V?.[pack.chemistry.name]
  if (storage_V === undefined || !isToStorage(to)) return undefined
  return say`Storage is ${show.perCell(storage_V)} a cell by the rules of this club.`
}

/** Volts that were asked for are bound only where they were lowered; full and a percentage start from the club's full. */
function fullBound(
  { pack, to, house }: Situation,
  { perCell_V, loweredBy }: Cutoff,
  { say, show, own }: Locale,
): Text | undefined {
  if (!pack) return undefined
  const full_V = fullVoltage_V(pack.chemistry, house)
  const meansFull = to === undefined || to.kind === 'soc' || (to.kind === 'named' && to.name === 'full')
  const isBound = meansFull || loweredBy === 'house'
  if (!isBound || perCell_V !== full_V || full_V === pack.chemistry.full_V.value) return undefined
  return say`Full is ${show.perCell(full_V)} a cell for ${own(pack.chemistry.name)} by the rules of this club.`
}

function floorBound({ source, house }: Situation, { say, show }: Locale): Text | undefined {
  if (source?.kind !== 'battery') return undefined
  const { name, loadFloor_V } = source.pack.chemistry
  const floor_V = house.sourceFloorPerCell_V?.[name]
  if (floor_V === undefined || floor_V <= loadFloor_V.value) return undefined
  return say`The source is stopped at ${show.perCell(floor_V)} a cell at the lowest by the rules of this club.`
}
