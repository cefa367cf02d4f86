// A line chart as ECharts options: stages named above the plot, the uncertain span shaded and in the legend.

import type { EChartsCoreOption } from 'echarts/core'
import type { LineChart, Mark, Series } from './chart.ts'
import {
  axisStyle,
  frame,
  legend,
  legendHeight_px,
  roundStep,
  smallFont_px,
  tick,
  titleHeight_px,
  width_px,
} from './frame.ts'
import { drawable, textWidth } from './text.ts'
import { type Colours, dashes, nth, symbols } from './theme.ts'

const sideOfAxis_px = 58
const sideOfNothing_px = 18

export const linesHeight_px = 300

export function linesOption(chart: LineChart, colours: Colours): EChartsCoreOption {
  const twoAxes = chart.yLabels.length > 1
  const entries = legendEntries(chart)
  const top_px =
    titleHeight_px(chart) + legendHeight_px(entries.map(({ name }) => name)) + (chart.marks ? 28 : 12)
  const plot_px = width_px - sideOfAxis_px - (twoAxes ? sideOfAxis_px : sideOfNothing_px)
  return {
    ...frame(chart, colours),
    legend: legend(titleHeight_px(chart) + 4, entries, colours),
    grid: {
      left: sideOfAxis_px,
      right: twoAxes ? sideOfAxis_px : sideOfNothing_px,
      top: top_px,
      bottom: 44,
    },
    xAxis: xAxis(chart, colours),
    yAxis: chart.yLabels.map((label, index) => yAxis(chart, label, index, colours)),
    series: [
      ...chart.series.map((series, index) => lineSeries(series, index, colours)),
      ...backdrop(chart, colours, plot_px),
    ],
  }
}

interface LegendEntry {
  readonly name: string
  readonly icon?: string
  readonly itemStyle?: { readonly opacity: number }
}

function legendEntries(chart: LineChart): LegendEntry[] {
  return [
    ...chart.series.map(({ name, readings }) => ({
      name: drawable(name),
      // Without readings the line stands alone in the picture, and so in the legend.
      ...(readings ? {} : { itemStyle: { opacity: 0 } }),
    })),
    ...(chart.level ? [{ name: drawable(chart.level.label), itemStyle: { opacity: 0 } }] : []),
    ...(chart.band ? [{ name: drawable(chart.band.label), icon: 'rect' }] : []),
  ]
}

function extent(chart: LineChart): readonly [number, number] {
  const xs = chart.series.flatMap(({ points }) => points.map(([x]) => x))
  const all = [...xs, ...(chart.marks ?? []).map(({ x }) => x), ...(chart.band ? [chart.band.to] : [])]
  return all.length === 0 ? [0, 1] : [Math.min(...all), Math.max(...all)]
}

/** Ends of a number axis at whole steps, so that they carry numbers. */
function numberEnds(chart: LineChart): { min: number; max: number; interval: number } {
  const [from, to] = extent(chart)
  const interval = roundStep(to > from ? to - from : 1)
  const min = Math.floor(from / interval + 1e-9) * interval
  return { min, max: Math.max(Math.ceil(to / interval - 1e-9) * interval, min + interval), interval }
}

function xAxis(chart: LineChart, colours: Colours): object {
  const style = axisStyle(colours)
  const shared = {
    ...style,
    name: drawable(chart.xLabel),
    nameLocation: 'middle',
    splitLine: { show: false },
  }
  if (chart.xScale === 'date') return { ...shared, type: 'time', splitNumber: 4 }
  return {
    ...shared,
    type: 'value',
    ...numberEnds(chart),
    axisLabel: { ...style.axisLabel, formatter: tick(chart) },
  }
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

function lineSeries(
  { name, points, axis = 0, readings = false }: Series,
  index: number,
  { inks }: Colours,
): object {
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

/** Everything behind the lines: each a series without points, so that the legend can name it. */
function backdrop(chart: LineChart, colours: Colours, plot_px: number): object[] {
  const layers: object[] = []
  if (chart.marks) layers.push(stageLayer(chart, chart.marks, colours, sideOfAxis_px, plot_px))
  if (chart.band) {
    const { from, to, label } = chart.band
    layers.push({
      ...emptySeries(label),
      itemStyle: { color: colours.band },
      markArea: { silent: true, data: [[{ xAxis: from }, { xAxis: to }]] },
    })
  }
  if (chart.level) {
    const { y, label, axis = 0 } = chart.level
    const lineStyle = { color: colours.text, width: 1.5, type: 'dotted' }
    layers.push({
      ...emptySeries(label),
      yAxisIndex: axis,
      lineStyle,
      itemStyle: { color: colours.text },
      markLine: { silent: true, symbol: 'none', label: { show: false }, lineStyle, data: [{ yAxis: y }] },
    })
  }
  return layers
}

const emptySeries = (name: string) => ({
  type: 'line',
  name: drawable(name),
  data: [],
  showSymbol: false,
  z: 1,
})

/** Every second stage lightly shaded, its name above it. */
function stageLayer(
  chart: LineChart,
  marks: readonly Mark[],
  colours: Colours,
  left_px: number,
  plot_px: number,
): object {
  const { min, max } = numberEnds(chart)
  const starts = [extent(chart)[0], ...marks.map(({ x }) => x)]
  const px = (x: number) => left_px + ((x - min) / (max - min)) * plot_px
  const names = marks.map(({ label }) => drawable(label))
  const centres_px = marks.map(({ x }, index) => px(((starts[index] as number) + x) / 2))
  const placed_px = sideBySide(
    centres_px,
    names.map(name => textWidth(name, smallFont_px)),
  )
  const stages = marks.map(({ x }, index) => [
    {
      xAxis: starts[index],
      name: names[index],
      itemStyle: { color: index % 2 === 0 ? 'transparent' : colours.stage },
      label: {
        color: colours.faint,
        fontSize: smallFont_px,
        position: 'top',
        offset: [(placed_px[index] as number) - (centres_px[index] as number), 0],
      },
    },
    { xAxis: x },
  ])
  return {
    ...emptySeries(' stages'),
    markArea: { silent: true, data: stages },
    markLine: {
      silent: true,
      symbol: 'none',
      label: { show: false },
      lineStyle: { color: colours.faint, width: 1, type: [3, 3] },
      data: marks.map(({ x }) => ({ xAxis: x })),
    },
  }
}

const gap_px = 8

/** Moves labels as little as keeps them apart and inside the picture; `centres_px` rise. */
export function sideBySide(centres_px: readonly number[], widths_px: readonly number[]): number[] {
  const placed = [...centres_px]
  let free_px = gap_px
  for (const [index, wide_px] of widths_px.entries()) {
    placed[index] = Math.max(placed[index] as number, free_px + wide_px / 2)
    free_px = (placed[index] as number) + wide_px / 2 + gap_px
  }
  free_px = width_px - gap_px
  for (const [index, wide_px] of [...widths_px.entries()].reverse()) {
    placed[index] = Math.min(placed[index] as number, free_px - wide_px / 2)
    free_px = (placed[index] as number) - wide_px / 2 - gap_px
  }
  return placed
}
