// A line chart as ECharts options: stages named above the plot, the uncertain span shaded and in the legend.

import type { EChartsCoreOption } from 'echarts/core'
import { present } from '../../ground/present.ts'
import type { LineChart, Series } from '../chart.ts'
import { backdrop } from './backdrop.ts'
import { numberEnds } from './ends.ts'
import { axisStyle, frame, legend, legendHeight_px, tick, titleHeight_px, width_px } from './frame.ts'
import { drawable } from './text.ts'
import { type Colours, dashes, nth, symbols } from './theme.ts'

const sideOfAxis_px = 58
const sideOfNothing_px = 18
export const linesHeight_px = 300

export function linesOption(chart: LineChart, colours: Colours): EChartsCoreOption {
  const twoAxes = chart.yLabels.length > 1
  const entries = legendEntries(chart)
  const top_px = titleHeight_px(chart) + legendHeight_px(entries.map(({ name }) => name)) + (chart.marks ? 28 : 12)
  const plot_px = width_px - sideOfAxis_px - (twoAxes ? sideOfAxis_px : sideOfNothing_px)
  return {
    ...frame(chart, colours),
    legend: legend(titleHeight_px(chart) + 4, entries, colours),
    grid: { left: sideOfAxis_px, right: twoAxes ? sideOfAxis_px : sideOfNothing_px, top: top_px, bottom: 44 },
    xAxis: xAxis(chart, colours),
    yAxis: chart.yLabels.map((label, index) => yAxis(chart, label, index, colours)),
    series: [
      ...chart.series.map((series, index) => lineSeries(series, index, colours)),
      ...backdrop(chart, colours, { left_px: sideOfAxis_px, wide_px: plot_px }),
    ],
  }
}

interface LegendEntry {
  readonly name: string
  readonly icon?: string
  readonly itemStyle?: { readonly opacity: number }
}

function legendEntries(chart: LineChart): LegendEntry[] {
  const { series, level, band } = chart
  const itemStyle = { opacity: 0 }
  return present([
    // Without readings the line stands alone in the picture, and so in the legend.
    ...series.map(({ name, readings }) => ({ name: drawable(name), itemStyle: readings ? undefined : itemStyle })),
    level && { name: drawable(level.label), itemStyle },
    band && { name: drawable(band.label), icon: 'rect' },
  ])
}

function xAxis(chart: LineChart, colours: Colours): object {
  const style = axisStyle(colours)
  const shared = { ...style, name: drawable(chart.xLabel), nameLocation: 'middle', splitLine: { show: false } }
  if (chart.xScale === 'date') return { ...shared, type: 'time', splitNumber: 4 }
  return { ...shared, type: 'value', ...numberEnds(chart), axisLabel: { ...style.axisLabel, formatter: tick(chart) } }
}

function yAxis(chart: LineChart, label: string, index: number, colours: Colours): object {
  const style = axisStyle(colours)
  return {
    ...style,
    type: 'value',
    scale: true,
    position: index === 0 ? 'left' : 'right',
    // A quantity that comes near zero is shown from zero.
    min: ({ min, max }: { min: number; max: number }) => (min >= 0 && min < max / 2 ? 0 : null),
    // Room about a level, so that its line is not hidden by the frame.
    boundaryGap: chart.level && (chart.level.axis ?? 0) === index ? ['6%', '6%'] : undefined,
    alignTicks: index > 0,
    splitNumber: 4,
    name: drawable(label),
    nameLocation: 'middle',
    nameRotate: index === 0 ? 90 : -90,
    nameGap: 40,
    splitLine: { ...style.splitLine, show: index === 0 },
    axisLabel: { ...style.axisLabel, formatter: tick(chart) },
  }
}

function lineSeries({ name, points, axis = 0, readings = false }: Series, index: number, { inks }: Colours): object {
  const color = nth(inks, index)
  return {
    type: 'line',
    name: drawable(name),
    data: points,
    yAxisIndex: axis,
    symbol: readings ? nth(symbols, index) : 'none',
    symbolSize: 8,
    lineStyle: { color, width: 2.5, type: nth(dashes, index) },
    itemStyle: { color },
    z: 5 - index,
  }
}
