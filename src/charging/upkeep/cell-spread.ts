// How far apart the cells of a pack read, and readings that no cell gives.

import { spreads } from '../setting/balancing.ts'
import type { Pack } from '../things/pack.ts'

export const spreadShare = (when: 'rest' | 'full' = 'rest'): number => (when === 'full' ? 0.5 : 1)
export type Evenness = 'balanced' | 'uneven' | 'apart' | 'far apart'

/** Which of the spreads, in V, the cells have passed. */
export function evenness(spread_V: number, when?: 'rest' | 'full'): Evenness {
  const { uneven_V, apart_V, farApart_V } = spreads.value
  const beyond = (limit_V: number) => spread_V > limit_V * spreadShare(when)
  if (beyond(farApart_V)) return 'far apart'
  return beyond(apart_V) ? 'apart' : beyond(uneven_V) ? 'uneven' : 'balanced'
}

/**
 * `lowest` and `highest` are indices, from 0.
 * @throws RangeError without any reading
 */
export function cellSpread(cells_V: readonly number[]) {
  if (cells_V.length === 0) throw new RangeError('no reading of a cell')
  const [lowest_V, highest_V] = [Math.min(...cells_V), Math.max(...cells_V)]
  return {
    spread_V: Number((highest_V - lowest_V).toFixed(6)),
    lowest: cells_V.indexOf(lowest_V),
    highest: cells_V.indexOf(highest_V),
    lowest_V,
    highest_V,
  }
}

export type ReadingFault =
  /** A reading near nothing, or of about two cells: a wire of the balance lead does not connect. */
  | { readonly kind: 'lead'; readonly cell: number; readonly cell_V: number }
  /** Another number of readings than cells on the label. */
  | { readonly kind: 'count'; readonly readings: number; readonly series: number }

/** Nobody measures a cell of a sound pack this low: nothing is connected there. */
const nothing_V = 0.5
/** Two cells in one reading: the wire between them is open. */
const doubled = 1.7
const meterError_V = 0.02

/** What shows that the readings are not those of the cells of this pack; such readings judge no cell. */
export function readingFault({ chemistry, series }: Pack, cells_V: readonly number[]): ReadingFault | undefined {
  const most_V = chemistry.full_V.value + meterError_V
  const sorted = cells_V.toSorted((a, b) => a - b)
  const middle_V = sorted[Math.floor((sorted.length - 1) / 2)] as number
  const cell = cells_V.findIndex(cell_V => cell_V < nothing_V || (cell_V > most_V && cell_V > doubled * middle_V))
  if (cell >= 0) return { kind: 'lead', cell, cell_V: cells_V[cell] as number }
  return cells_V.length === series ? undefined : { kind: 'count', readings: cells_V.length, series }
}
