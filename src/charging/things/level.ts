// Where a pack stands or is to go, as people tell it: what `full` and `storage` are is for the chemistry and the house to say.

import type { Chemistry } from './chemistry.ts'
import { socAt } from './curve.ts'
import type { HouseLimits } from './house-limits.ts'

/** Where a charge starts or ends. Voltages are per cell; `soc` is 0 to 1. */
export type State =
  | { readonly kind: 'soc'; readonly soc: number }
  /** With the volts of the whole pack where those were told. */
  | { readonly kind: 'rest'; readonly perCell_V: number; readonly pack_V?: number }

/** Where a charge is to go: hold at a voltage until the current falls, or stop at a state of charge. */
export type Target =
  | { readonly kind: 'voltage'; readonly perCell_V: number }
  | { readonly kind: 'soc'; readonly soc: number; readonly cutoffPerCell_V: number }

export type LevelName = 'full' | 'storage' | 'empty'
export type Level = State | { readonly kind: 'named'; readonly name: LevelName }

/** Full voltage of one cell under the rules of the house, in V. */
export function fullVoltage_V(chemistry: Chemistry, { gentleLiIon, fullPerCell_V }: HouseLimits): number {
  const gentle_V = gentleLiIon ? chemistry.gentleFull_V : undefined
  const house_V = fullPerCell_V?.[chemistry.name] ?? Number.POSITIVE_INFINITY
  return Math.min((gentle_V ?? chemistry.full_V).value, house_V)
}

/** Storage voltage of one cell under the rules of the house, in V: never above that of the chemistry. */
export const storageVoltage_V = (chemistry: Chemistry, { storagePerCell_V }: HouseLimits): number =>
  Math.min(chemistry.storage_V.value, storagePerCell_V?.[chemistry.name] ?? Number.POSITIVE_INFINITY)

/** A start in the core's terms. "Empty" is landed: the floor at rest. */
export function startOf(level: Level, chemistry: Chemistry, house: HouseLimits): State {
  if (level.kind !== 'named') return level
  switch (level.name) {
    case 'full':
      return { kind: 'soc', soc: 1 }
    case 'storage':
      return { kind: 'rest', perCell_V: storageVoltage_V(chemistry, house) }
    case 'empty':
      return { kind: 'rest', perCell_V: chemistry.restFloor_V.value }
  }
}

/** State of charge, 0 to 1. */
export const socOf = (state: State, chemistry: Chemistry): number =>
  state.kind === 'soc' ? state.soc : socAt(chemistry, state.perCell_V)

/** An end in the core's terms; `empty` is none, and its reader refuses it. */
export function goalOf(level: Level, chemistry: Chemistry, house: HouseLimits): Target {
  const full_V = fullVoltage_V(chemistry, house)
  if (level.kind === 'soc') return { ...level, cutoffPerCell_V: full_V }
  if (level.kind === 'rest') return { kind: 'voltage', perCell_V: level.perCell_V }
  return { kind: 'voltage', perCell_V: level.name === 'storage' ? storageVoltage_V(chemistry, house) : full_V }
}
