// A battery used as a source, drained: its volts under load against time, and the floor at which to stop.

import type { DrainPoint } from '../charging/simulation/drain-curve.ts'
import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'
import type { LineChart, Mark } from './chart.ts'
import { drainChartWords } from './drain-chart.words.ts'
import { type TimeAxis, timeAxis } from './time-axis.ts'
import { timeUnits } from './time-axis.words.ts'

export interface DrainChartRequest {
  /** What feeds what: "4S 5000mAh Li-ion feeds 6 packs". */
  readonly what: Text
  /** At least one, in order of time. */
  readonly points: readonly DrainPoint[]
  readonly floor_V: number
  /** When each pack is done, in s from the start. */
  readonly packEnds_s: readonly number[]
  readonly locale: Locale
}

/** More names than this do not fit above the plot, nor more numbers than that. */
const mostNamedPacks = 6
const mostNumberedPacks = 16
/** A picture has no room for more. */
const mostPoints = 600

export function drainChart({ what, points, floor_V, packEnds_s, locale }: DrainChartRequest): LineChart {
  const last = points.at(-1) as DrainPoint
  const axis = timeAxis(last.time_s)
  const words = drainChartWords(locale)
  const lowest_V = Math.min(...points.map(({ voltage_V }) => voltage_V))
  return {
    kind: 'lines',
    title: words.title(what),
    xLabel: timeUnits(locale)[axis.unit],
    yLabels: [words.volts],
    series: [
      { name: words.source, points: thinned(points).map(({ time_s, voltage_V }) => [axis.at(time_s), voltage_V]) },
    ],
    marks: packEnds_s.length > mostNumberedPacks ? undefined : packMarks(packEnds_s, axis, words),
    level: { y: floor_V, label: words.floor(floor_V) },
    decimalMark: locale.show.mark,
    alternative: words.alternative(what, lowest_V, last.time_s, floor_V),
  }
}

type Words = ReturnType<typeof drainChartWords>

const packMarks = (packEnds_s: readonly number[], axis: TimeAxis, words: Words): Mark[] =>
  packEnds_s.map((end_s, index) => ({
    x: axis.at(end_s),
    label: packEnds_s.length > mostNamedPacks ? words.numbered(index + 1) : words.pack(index + 1),
  }))

/** Evenly, and with the last one. */
function thinned(points: readonly DrainPoint[]): readonly DrainPoint[] {
  const every = Math.ceil(points.length / mostPoints)
  return points.filter((_, index) => index % every === 0 || index === points.length - 1)
}
