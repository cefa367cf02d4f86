// How many cells the volts on a label are of.

import type { Measure } from '../sentence/measures.ts'

export const mostSeries = 14
/** What labels print on a lithium pack, in V for one cell. */
export const nominal_V = [3.7, 3.8, 3.6] as const

/** Labels of round cells count so many volts for each; twice 12.6 V and more is what a full LiPo reads. */
const round = { perCell_V: 3.6, most: 6 }

/** "10.8 V", "18 V": cells of a laptop or a tool, and no LiPo. */
export const isRoundLabel = (label_V: number, series: number): boolean =>
  series <= round.most && Math.abs(label_V / round.perCell_V - series) < 0.003

/** The cells in series whose label says these volts. */
export function labelledSeries(measure: Measure | undefined): number | undefined {
  const count = nominal_V
    .map(volts => (measure?.value ?? 0) / volts)
    .find(cells => Math.abs(cells - Math.round(cells)) < 0.003)
  const series = Math.round(count ?? 0)
  return series >= 2 && series <= mostSeries ? series : undefined
}
