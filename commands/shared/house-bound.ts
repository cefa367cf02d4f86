// Where a rule of the house, other than one on the current, has made an answer stricter: the reply says so.

import { type Cutoff, fullVoltage_V } from '../../src/charging/setting/old-cutoff.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Show } from '../../src/ground/show.ts'
import type { Level } from '../../src/language/things/state.ts'

interface Asked {
  readonly pack: Pack
  readonly source?: Source
  readonly to?: Level
}

/** A sentence for each rule that bound, none where none did. Limits on the current have lines of their own. */
export function houseBound(
  { pack, source, to }: Asked,
  cutoff: Cutoff,
  house: HouseLimits,
  show: Show,
): string[] {
  return [
    ...storageBound(pack, to, house, show),
    ...fullBound(pack, to, cutoff, house, show),
    ...floorBound(source, house, show),
  ]
}

function storageBound({ chemistry }: Pack, to: Level | undefined, house: HouseLimits, show: Show): string[] {
  const storage_V = house.storagePerCell_V?.[chemistry.name]
  if (to?.kind !== 'named' || to.name !== 'storage' || storage_V === undefined) return []
  return [`Storage is ${show.perCell(storage_V)} per cell by the rules of this house.`]
}

/** Volts that were asked for are bound only where they were lowered; full and a percentage start from the house's full. */
function fullBound(
  { chemistry }: Pack,
  to: Level | undefined,
  { perCell_V, loweredBy }: Cutoff,
  house: HouseLimits,
  show: Show,
): string[] {
  const full_V = fullVoltage_V(chemistry, house)
  const meansFull = to === undefined || to.kind === 'soc' || (to.kind === 'named' && to.name === 'full')
  const bound = meansFull || loweredBy === 'house'
  if (!bound || perCell_V !== full_V || full_V === chemistry.full_V.value) return []
  return [`Full is ${show.perCell(full_V)} per cell for ${chemistry.name} by the rules of this house.`]
}

function floorBound(source: Source | undefined, house: HouseLimits, show: Show): string[] {
  if (source?.kind !== 'battery') return []
  const { chemistry } = source.pack
  const floor_V = house.sourceFloorPerCell_V?.[chemistry.name]
  if (floor_V === undefined || floor_V <= chemistry.loadFloor_V.value) return []
  return [
    `The source is stopped at ${show.perCell(floor_V)} per cell at the lowest by the rules of this house.`,
  ]
}
