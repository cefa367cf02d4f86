// A battery used as a source, drained: its volts under load against time, and the floor at which to stop.

import type { DrainPoint } from '../charging/simulation/drain-curve.ts'
import type { Show } from '../ground/show.ts'
import type { LineChart, Mark } from './chart.ts'
import { type TimeAxis, timeAxis } from './time-axis.ts'

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

/** More names than this do not fit above the plot, nor more numbers than that. */
const mostNamedPacks = 6
const mostNumberedPacks = 16
/** A picture has no room for more. */
const mostPoints = 600

export function drainChart({ what, points, floor_V, packEnds_s, show }: DrainChartRequest): LineChart {
  const last = points.at(-1) as DrainPoint
  const axis = timeAxis(last.time_s)
  const lowest_V = Math.min(...points.map(({ voltage_V }) => voltage_V))
  return {
    kind: 'lines',
    title: `Source: ${what}`,
    xLabel: axis.unit,
    yLabels: ['V under load'],
    series: [
      {
        name: 'source',
        points: thinned(points).map(({ time_s, voltage_V }) => [axis.at(time_s), voltage_V]),
      },
    ],
    ...(packEnds_s.length > mostNumberedPacks ? {} : { marks: packMarks(packEnds_s, axis) }),
    level: { y: floor_V, label: `floor ${show.voltage(floor_V)}` },
    decimalMark: show.mark,
    alternative: `${what}: the volts under load go down to ${show.voltage(lowest_V)} in ${show.duration(last.time_s)}; the floor at which to stop is ${show.voltage(floor_V)}.`,
  }
}

const packMarks = (packEnds_s: readonly number[], axis: TimeAxis): Mark[] =>
  packEnds_s.map((end_s, index) => ({
    x: axis.at(end_s),
    label: packEnds_s.length > mostNamedPacks ? String(index + 1) : `pack ${index + 1}`,
  }))

/** Evenly, and with the last one. */
function thinned(points: readonly DrainPoint[]): readonly DrainPoint[] {
  const every = Math.ceil(points.length / mostPoints)
  return points.filter((_, index) => index % every === 0 || index === points.length - 1)
}
