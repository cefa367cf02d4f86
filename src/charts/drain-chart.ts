// A battery used as a source, drained: its volts under load against minutes, and the floor at which to stop.

import type { Show } from '../assistant/show.ts'
import type { LineChart } from './chart.ts'

export interface DrainPoint {
  readonly time_s: number
  /** Of the whole battery, under load. */
  readonly voltage_V: number
}

export interface DrainChartRequest {
  /** What feeds what: "4S 5000mAh Li-ion feeds 6 packs". */
  readonly what: string
  /** At least one, in order of time. */
  readonly points: readonly DrainPoint[]
  readonly floor_V: number
  /** When each pack is done, in s from the start. */
  readonly packEnds_s: readonly number[]
  readonly show: Show
}

/** More names than this do not fit above the plot. */
const mostNamedPacks = 6

export function drainChart({ what, points, floor_V, packEnds_s, show }: DrainChartRequest): LineChart {
  const last = points.at(-1) as DrainPoint
  const lowest_V = Math.min(...points.map(({ voltage_V }) => voltage_V))
  return {
    kind: 'lines',
    title: `Source: ${what}`,
    xLabel: 'minutes',
    yLabels: ['V under load'],
    series: [{ name: 'source', points: points.map(({ time_s, voltage_V }) => [time_s / 60, voltage_V]) }],
    marks: packEnds_s.map((end_s, index) => ({
      x: end_s / 60,
      label: packEnds_s.length > mostNamedPacks ? String(index + 1) : `pack ${index + 1}`,
    })),
    level: { y: floor_V, label: `floor ${show.voltage(floor_V)}` },
    decimalMark: show.mark,
    alternative: `${what}: the volts under load go down to ${show.voltage(lowest_V)} in ${show.duration(last.time_s)}; the floor at which to stop is ${show.voltage(floor_V)}.`,
  }
}
