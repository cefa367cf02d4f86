// Where the axes of a line chart begin and end.

import { present } from '../../ground/present.ts'
import type { LineChart } from '../chart.ts'
import { ticksOf } from './axes.ts'
import { roundSteps, type Span, type Steps, spanOf } from './scale.ts'

const day_ms = 86_400_000
const days = 3

/** From the first to the last x that anything in the chart has. */
export function extent({ series, marks = [], band, xScale }: LineChart): Span {
  const xs = [...series.flatMap(({ points }) => points.map(([x]) => x)), ...marks.map(({ x }) => x)]
  return spanOf(present([...xs, band?.from, band?.to]), xScale === 'date' ? day_ms : undefined)
}

/** Along the bottom: round numbers, or whole days in UTC. */
export function horizontal(chart: LineChart) {
  const [from, to] = extent(chart)
  if (chart.xScale !== 'date') {
    const steps = roundSteps([from, to])
    return { steps, ticks: ticksOf(steps, chart) }
  }
  const min = Math.floor(from / day_ms) * day_ms
  const steps = { min, step: Math.ceil((to - min) / days / day_ms) * day_ms, count: days }
  const ticks = ticksOf(steps, chart).map(({ value }) => ({ value, label: new Date(value).toISOString().slice(0, 10) }))
  return { steps, ticks }
}

/** Up each side; the right one has as many steps as the left, so that its numbers stand at the same lines. */
export function vertical(chart: LineChart): Steps[] {
  const left = roundSteps(heights(chart, 0))
  return chart.yLabels.map((_, axis) => (axis === 0 ? left : roundSteps(heights(chart, axis), left.count)))
}

function heights({ series, level }: LineChart, axis: number): Span {
  const own = series.filter(one => (one.axis ?? 0) === axis).flatMap(({ points }) => points.map(([, y]) => y))
  const [low, high] = spanOf(own)
  const limit = level && (level.axis ?? 0) === axis ? level.y : undefined
  const [from, to] = limit === undefined ? [low, high] : about(limit, [Math.min(low, limit), Math.max(high, limit)])
  // A quantity that comes near zero is shown from zero.
  return [from >= 0 && from < to / 2 ? 0 : from, to]
}

/** With room about a limit, so that its line is not hidden by the frame. */
function about(limit: number, [from, to]: Span): Span {
  const room = (to - from) * 0.06
  return [Math.min(from, limit - room), Math.max(to, limit + room)]
}
