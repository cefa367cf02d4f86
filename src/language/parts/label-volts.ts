// How many cells the volts on a label are of.

import type { Measure } from '../quantities/measures.ts'
import { mostSeries } from './draft.ts'

/** What labels print on a lithium pack, in V for one cell. */
export const nominal_V = [3.7, 3.8, 3.6] as const

/** The cells in series whose label says these volts. */
export function labelledSeries(measure: Pick<Measure, 'value'> | undefined): number | undefined {
  const count = nominal_V
    .map(volts => (measure?.value ?? 0) / volts)
    .find(cells => Math.abs(cells - Math.round(cells)) < 0.003)
  const series = Math.round(count ?? 0)
  return series >= 2 && series <= mostSeries ? series : undefined
}
