// Where the x axis of a line chart begins and ends.

import { present } from '../../ground/present.ts'
import type { LineChart } from '../chart.ts'
import { roundStep } from './frame.ts'

/** From the first to the last x that anything in the chart has. */
export function extent(chart: LineChart): readonly [number, number] {
  const { series, marks = [], band } = chart
  const xs = [...series.flatMap(({ points }) => points.map(([x]) => x)), ...marks.map(({ x }) => x)]
  const all = present([...xs, band?.from, band?.to])
  return all.length === 0 ? [0, 1] : [Math.min(...all), Math.max(...all)]
}

/** Ends of a number axis at whole steps, so that they carry numbers. */
export function numberEnds(chart: LineChart): { min: number; max: number; interval: number } {
  const [from, to] = extent(chart)
  const interval = roundStep(to > from ? to - from : 1)
  const min = Math.floor(from / interval + 1e-9) * interval
  return { min, max: Math.max(Math.ceil(to / interval - 1e-9) * interval, min + interval), interval }
}
