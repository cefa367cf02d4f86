// A line chart as SVG: stages named above the plot, the uncertain span shaded and in the legend.

import { present } from '../../ground/present.ts'
import type { LineChart, Series } from '../chart.ts'
import { bottomAxis, sideAxis, ticksOf } from './axes.ts'
import { bandLayer, levelLine, stagesLayer } from './backdrop.ts'
import { extent, horizontal, vertical } from './ends.ts'
import { heading, type LegendEntry, type Plot, picture, swatch_px, width_px } from './frame.ts'
import { scale } from './scale.ts'
import { element, line, type Point, pathOf } from './svg.ts'
import { type Colours, dashes, nth, symbols } from './theme.ts'

const [sideOfAxis_px, sideOfNothing_px, height_px] = [58, 18, 300]

export function linesSvg(chart: LineChart, colours: Colours): string {
  const { drawn, end_px } = heading(chart, legend(chart, colours))
  const plot: Plot = {
    left: sideOfAxis_px,
    right: width_px - (chart.yLabels.length > 1 ? sideOfAxis_px : sideOfNothing_px),
    top: end_px + (chart.marks ? 28 : 12),
    bottom: height_px - 44,
  }
  const along = horizontal(chart)
  const x = scale(along.steps, [plot.left, plot.right])
  const heights = vertical(chart)
  const ys = heights.map(steps => scale(steps, [plot.bottom, plot.top]))
  const y = (axis = 0) => ys[axis] as (value: number) => number
  const drawnSeries = ({ points, axis, readings }: Series, index: number) => {
    const places = points.map(([along, up]): Point => [x(along), y(axis)(up)])
    return curve(places, readings ? places : [], index, colours)
  }
  const ticks = heights.map(steps => ticksOf(steps, chart))
  return picture(chart, height_px, colours, [
    drawn,
    stagesLayer(chart.marks ?? [], extent(chart)[0], x, plot, colours),
    chart.band ? bandLayer(chart.band, x, plot, colours) : '',
    ...(ticks[0] ?? []).map(({ value }) =>
      line([plot.left, y()(value)], [plot.right, y()(value)], { stroke: colours.grid }),
    ),
    chart.level ? levelLine([plot.left, plot.right], y(chart.level.axis)(chart.level.y), colours) : '',
    ...chart.series.map(drawnSeries).reverse(),
    bottomAxis({ title: chart.xLabel, ticks: along.ticks }, x, plot, colours),
    ...chart.yLabels.map((title, axis) =>
      sideAxis({ title, ticks: ticks[axis] ?? [], side: axis === 0 ? 'left' : 'right' }, y(axis), plot, colours),
    ),
  ])
}

/** The line through `points`, and a symbol at each reading. */
function curve(points: readonly Point[], readings: readonly Point[], index: number, { inks }: Colours): string {
  const [ink, dash, symbol] = [nth(inks, index), nth(dashes, index), nth(symbols, index)]
  const stroke = { stroke: ink, 'stroke-width': 2.5, 'stroke-dasharray': dash, 'stroke-linejoin': 'round' }
  return [
    element('path', { d: pathOf(points), fill: 'none', ...stroke }),
    ...readings.map(([x, y]) => element('path', { d: symbol, fill: ink, transform: `translate(${x} ${y})` })),
  ].join('')
}

function legend({ series, level, band }: LineChart, colours: Colours): LegendEntry[] {
  const [start, middle, end] = [[0, 0] as const, [swatch_px / 2, 0] as const, [swatch_px, 0] as const]
  return present([
    ...series.map(({ name, readings }, index) => ({
      name,
      swatch: curve([start, end], readings ? [middle] : [], index, colours),
    })),
    level && { name: level.label, swatch: levelLine([0, swatch_px], 0, colours) },
    band && { name: band.label, swatch: element('rect', { y: -5, width: swatch_px, height: 10, fill: colours.band }) },
  ])
}
