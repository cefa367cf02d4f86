// Cells that read as those of another type: a label that may be wrong, or a setting that may be.

import { chemistries } from '../things/chemistries.ts'
import type { Chemistry } from '../things/chemistry.ts'
import { restingVoltage } from '../things/curve.ts'

/** Resting cells of a flat curve lie this near to storage between a fifth and nine tenths of their charge. */
export const flat_V = 0.06
const isFlat = (chemistry: Chemistry): boolean =>
  restingVoltage(chemistry, 0.9) - restingVoltage(chemistry, 0.2) < 2 * flat_V
const offRest_V = ({ storage_V }: Chemistry, cells_V: readonly number[]): number =>
  Math.max(...cells_V.map(cell_V => Math.abs(cell_V - storage_V.value)))
const othersFlat = (chemistry: Chemistry): readonly Chemistry[] =>
  chemistries.filter(other => other.name !== chemistry.name && isFlat(other))

/** How far the cells read from where those of another, flat type rest, in V; undefined where there is no such type. */
export function besideFlat_V(chemistry: Chemistry, cells_V: readonly number[]): number | undefined {
  const offs_V = othersFlat(chemistry).map(other => offRest_V(other, cells_V))
  return offs_V.length === 0 ? undefined : Math.min(...offs_V)
}

/** The flat type where such cells would rest. */
export const flatLike = (chemistry: Chemistry, cells_V: readonly number[]): Chemistry | undefined =>
  othersFlat(chemistry).find(other => offRest_V(other, cells_V) < flat_V)

/** The first type that cells may be of that all read above full for `chemistry`. */
export const fullerLike = (chemistry: Chemistry, cells_V: readonly number[]): Chemistry | undefined =>
  cells_V.length > 0 && Math.min(...cells_V) > chemistry.full_V.value
    ? chemistries.find(
        ({ restFloor_V, full_V }) =>
          Math.min(...cells_V) >= restFloor_V.value && Math.max(...cells_V) <= full_V.value + 0.02,
      )
    : undefined
