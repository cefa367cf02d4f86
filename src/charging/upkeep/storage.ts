// Which way a pack goes to its storage voltage, and how much charge that moves.

import { practice } from '../things/cited.ts'
import { restingVoltage, socAt } from '../things/curve.ts'
import type { HouseLimits } from '../things/house-limits.ts'
import { type State, socOf, storageVoltage_V } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'

export const storageTolerance_V = practice(
  0.03,
  'a pack that rests within 0.03 V per cell of its storage voltage is stored',
)

const nearSoc = 0.15

/** In s. */
export const storeWithin_s = practice(
  2 * 24 * 3600,
  'a full pack that will not fly goes to storage the same day, within two days at the latest',
)

export interface StorageMove {
  readonly way: 'charge' | 'discharge' | 'stay'
  readonly rest_V: number
  readonly storage_V: number
  readonly fromSoc: number
  readonly toSoc: number
  readonly moved_Ah: number
}

export function storageMove(pack: Pack, from: State, house: HouseLimits): StorageMove {
  const chemistry = pack.chemistry
  const storage_V = storageVoltage_V(chemistry, house)
  const rest_V = from.kind === 'rest' ? from.perCell_V : restingVoltage(chemistry, from.soc)
  const fromSoc = socOf(from, chemistry)
  const toSoc = socAt(chemistry, storage_V)
  const isNear = Math.abs(rest_V - storage_V) <= storageTolerance_V.value + 1e-9
  // On a flat curve near volts can hide far charge.
  const isThere = isNear && Math.abs(fromSoc - toSoc) <= nearSoc
  const way = isThere ? 'stay' : rest_V < storage_V ? 'charge' : 'discharge'
  return { way, rest_V, storage_V, fromSoc, toSoc, moved_Ah: Math.abs(fromSoc - toSoc) * pack.capacity_Ah }
}
