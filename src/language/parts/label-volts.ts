// How many cells the volts on a label are of, and which.

import type { Measure } from '../quantities/measures.ts'
import { mostSeries } from './draft.ts'

/**
 * What labels print on a lithium pack, in V for one cell, the commonest first. The type only where it is charged more
 * gently than the commonest: such volts may also be those that somebody read off.
 */
const labels = [
  { perCell_V: 3.7, likely: undefined, most: mostSeries },
  { perCell_V: 3.8, likely: undefined, most: mostSeries },
  { perCell_V: 3.6, likely: 'Li-ion', most: mostSeries },
  { perCell_V: 3.3, likely: 'LiFe', most: 4 },
] as const

/** Of the commonest cells. */
export const nominal_V = labels[0].perCell_V

/** The cells in series whose label says these volts, and their type where it tells. */
export function labelled(measure: Pick<Measure, 'value'> | undefined) {
  for (const { perCell_V, likely, most } of labels) {
    const cells = (measure?.value ?? 0) / perCell_V
    const series = Math.round(cells)
    if (Math.abs(cells - series) < 0.003 && series >= 2 && series <= most) return { series, likely, perCell_V }
  }
  return undefined
}
