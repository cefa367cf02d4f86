// What stands behind the lines of a chart: its stages, the uncertain span, and a level.

import type { LineChart, Mark } from '../chart.ts'
import { extent, numberEnds } from './ends.ts'
import { smallFont_px, width_px } from './frame.ts'
import { drawable, textWidth } from './text.ts'
import type { Colours } from './theme.ts'

/** Where the plot lies in the picture. */
interface Plot {
  readonly left_px: number
  readonly wide_px: number
}

/** Each layer is a series, so that the legend can name it. */
export function backdrop(chart: LineChart, colours: Colours, plot: Plot): object[] {
  const layers: object[] = []
  if (chart.marks) layers.push(stageLayer(chart, chart.marks, colours, plot))
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
    layers.push({
      ...emptySeries(label),
      // Points of its own, so that the axis reaches to it.
      data: extent(chart).map(x => [x, y]),
      yAxisIndex: axis,
      lineStyle: { color: colours.text, width: 1.5, type: 'dotted' },
      itemStyle: { color: colours.text },
    })
  }
  return layers
}

const emptySeries = (name: string) => ({ type: 'line', name: drawable(name), data: [], showSymbol: false, z: 1 })

/** Every second stage lightly shaded, its name above it. */
function stageLayer(chart: LineChart, marks: readonly Mark[], colours: Colours, { left_px, wide_px }: Plot): object {
  const { min, max } = numberEnds(chart)
  const starts = [extent(chart)[0], ...marks.map(({ x }) => x)]
  const px = (x: number) => left_px + ((x - min) / (max - min)) * wide_px
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
