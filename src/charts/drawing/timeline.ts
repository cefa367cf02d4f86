// A timeline as ECharts options: one row each, bars with their label inside or beside them.

import type { EChartsCoreOption } from 'echarts/core'
import type { CustomSeriesRenderItem } from 'echarts/types/dist/shared'
import type { TimelineBar, TimelineChart } from '../chart.ts'
import { type Placed, placeLabel } from './bar-label.ts'
import {
  axisStyle,
  fontSize_px,
  frame,
  legend,
  legendHeight_px,
  roundStep,
  smallFont_px,
  tick,
  titleHeight_px,
  width_px,
} from './frame.ts'
import { drawable, fittedName, textWidth } from './text.ts'
import { type Colours, nth } from './theme.ts'

const row_px = 30
const bar_px = 20
const widestRowName_px = 140
const right_px = 18

export function timelineHeight_px(chart: TimelineChart): number {
  return top_px(chart) + Math.max(chart.rows.length, 1) * row_px + 44
}

export function timelineOption(given: TimelineChart, colours: Colours): EChartsCoreOption {
  const chart = { ...given, bars: given.bars.map(onAxis) }
  const style = axisStyle(colours)
  const end = Math.max(1, ...chart.bars.map(({ to }) => to), ...(chart.marks ?? []).map(({ x }) => x))
  const interval = roundStep(end)
  const max = Math.ceil(end / interval - 1e-9) * interval
  const left_px = rowNames_px(chart)
  const groups = groupsOf(chart)
  return {
    ...frame(chart, colours),
    legend: groups.length > 0 ? legend(titleHeight_px(chart) + 4, groups.map(rounded), colours) : undefined,
    grid: { left: left_px, right: right_px, top: top_px(chart), bottom: 44 },
    xAxis: {
      ...style,
      type: 'value',
      min: 0,
      max,
      interval,
      name: drawable(chart.xLabel),
      nameLocation: 'middle',
      axisLabel: { ...style.axisLabel, formatter: tick(chart) },
    },
    yAxis: {
      ...style,
      type: 'category',
      inverse: true,
      data: chart.rows.map(drawable),
      axisTick: { show: false },
      axisLabel: {
        ...style.axisLabel,
        hideOverlap: false,
        interval: 0,
        fontSize: smallFont_px,
        formatter: (name: string) => fittedName(name, left_px - 18, smallFont_px),
      },
    },
    series: [
      ...(groups.length > 0 ? groups : [undefined]).map((group, index) =>
        barSeries(chart, group, nth(colours.inks, index), colours, (width_px - left_px - right_px) / max),
      ),
      markLayer(chart, colours, left_px, (width_px - left_px - right_px) / max),
    ],
  }
}

/**
 * The axis starts at 0 and a bar runs forward. The PNG renderer ends the whole process over shapes far outside
 * the picture, so none is given to it.
 */
const onAxis = (bar: TimelineBar): TimelineBar => {
  const from = Math.max(0, bar.from)
  return { ...bar, from, to: Math.max(from, bar.to) }
}

const rounded = (name: string) => ({ name, icon: 'roundRect' })

const groupsOf = ({ bars }: TimelineChart): string[] => [
  ...new Set(bars.flatMap(({ group }) => (group === undefined ? [] : [drawable(group)]))),
]

const rowNames_px = ({ rows }: TimelineChart): number =>
  Math.min(widestRowName_px, Math.max(20, ...rows.map(row => textWidth(drawable(row), smallFont_px)))) + 20
const top_px = (chart: TimelineChart): number =>
  titleHeight_px(chart) + legendHeight_px(groupsOf(chart)) + (chart.marks ? 24 : 8)

function barSeries(
  chart: TimelineChart,
  group: string | undefined,
  ink: string,
  colours: Colours,
  perUnit_px: number,
): object {
  const bars = chart.bars.filter(
    bar => group === undefined || (bar.group !== undefined && drawable(bar.group) === group),
  )
  const max = (width_px - rowNames_px(chart) - right_px) / perUnit_px
  const labels = bars.map(bar => placeLabel(bar, chart, perUnit_px, max))
  const renderItem: CustomSeriesRenderItem = ({ dataIndex }, api) => {
    const [left = 0, middle = 0] = api.coord([api.value(0), api.value(2)])
    const [right = 0] = api.coord([api.value(1), api.value(2)])
    const label = labels[dataIndex] as Placed
    const shape = { x: left, y: middle - bar_px / 2, width: right - left, height: bar_px, r: 3 }
    return {
      type: 'group',
      children: [
        { type: 'rect', shape, style: { fill: `${ink}40`, stroke: ink, lineWidth: 1.5 } },
        {
          type: 'text',
          x: left + label.at_px,
          y: middle,
          style: {
            text: label.text,
            fill: colours.text,
            fontSize: smallFont_px,
            verticalAlign: 'middle',
            stroke: label.outside ? colours.background : undefined,
            lineWidth: label.outside ? 4 : undefined,
          },
        },
      ],
    }
  }
  return {
    type: 'custom',
    z: 3,
    name: group,
    itemStyle: { color: ink },
    renderItem,
    data: bars.map(({ row, from, to }) => [from, to, chart.rows.indexOf(row)]),
    encode: { x: [0, 1], y: 2 },
  }
}

function markLayer({ marks = [] }: TimelineChart, colours: Colours, left_px: number, perUnit_px: number): object {
  const beyondEdge_px = (x: number, label: string) =>
    Math.max(0, left_px + x * perUnit_px + textWidth(label, fontSize_px) / 2 + 4 - width_px)

  return {
    type: 'line',
    data: [],
    z: 1,
    markLine: {
      silent: true,
      symbol: 'none',
      lineStyle: { color: colours.text, width: 1.5, type: [4, 3] },
      data: marks.map(({ x, label }) => ({
        xAxis: x,
        label: {
          position: 'start',
          formatter: () => drawable(label),
          color: colours.text,
          fontSize: fontSize_px,
          offset: [-beyondEdge_px(x, label), 0],
        },
      })),
    },
  }
}
