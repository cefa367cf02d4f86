// A timeline as SVG: one row each, bars with their label inside or beside them.

import type { Mark, TimelineBar, TimelineChart } from '../chart.ts'
import { bottomAxis, ticksOf, within } from './axes.ts'
import { placeLabel } from './bar-label.ts'
import { heading, type Plot, picture, smallFont_px, swatch_px, width_px } from './frame.ts'
import { endOf, roundSteps, scale } from './scale.ts'
import { element, line, words } from './svg.ts'
import { drawable, fittedName, textWidth } from './text.ts'
import { type Colours, nth } from './theme.ts'

const [row_px, bar_px, widestRowName_px, right_px, below_px] = [30, 20, 140, 18, 44]

export function timelineSvg(given: TimelineChart, colours: Colours): string {
  const chart = { ...given, bars: given.bars.map(onAxis) }
  const { rows, bars, marks = [] } = chart
  const inks = new Map(groupsOf(chart).map((group, index) => [group, nth(colours.inks, index)]))
  const legend = [...inks].map(([name, ink]) => ({ name, swatch: box({ y: -5, width: swatch_px, height: 10 }, ink) }))
  const { drawn, end_px } = heading(chart, legend)
  const top = end_px + (chart.marks ? 24 : 8)
  const bottom = top + Math.max(rows.length, 1) * row_px
  const plot: Plot = { left: rowNames_px(rows), right: width_px - right_px, top, bottom }
  const steps = roundSteps([0, Math.max(1, ...bars.map(({ to }) => to), ...marks.map(({ x }) => x))])
  const x = scale(steps, [plot.left, plot.right])
  const ticks = ticksOf(steps, chart)
  const middleOf = (row: number) => top + (row + 0.5) * row_px
  return picture(chart, bottom + below_px, colours, [
    drawn,
    ...ticks.map(({ value }) => line([x(value), top], [x(value), bottom], { stroke: colours.grid })),
    ...marks.map(mark => markLine(mark, x, plot, colours)),
    ...bars.map(bar => {
      const ink = inks.get(bar.group ?? '') ?? nth(colours.inks, 0)
      const y = middleOf(rows.indexOf(bar.row))
      const { text, at_px, outside } = placeLabel(bar, chart, x(1) - x(0), endOf(steps))
      const halo = outside ? { stroke: colours.background, 'stroke-width': 4, 'paint-order': 'stroke' } : {}
      const label = { 'text-anchor': 'start', 'font-size': smallFont_px, ...halo }
      return (
        box({ x: x(bar.from), y: y - bar_px / 2, width: x(bar.to) - x(bar.from), height: bar_px }, ink) +
        words(text, x(bar.from) + at_px, y + 4, label)
      )
    }),
    ...rows.map((row, index) => {
      const name = fittedName(drawable(row), plot.left - 18, smallFont_px)
      return words(name, plot.left - 8, middleOf(index) + 4, { 'text-anchor': 'end', 'font-size': smallFont_px })
    }),
    line([plot.left, top], [plot.left, bottom], { stroke: colours.faint }),
    bottomAxis({ title: chart.xLabel, ticks }, x, plot, colours),
  ])
}

/** The axis starts at 0 and a bar runs forward: the PNG renderer ends the process over shapes far outside the picture. */
const onAxis = (bar: TimelineBar): TimelineBar => {
  const from = Math.max(0, bar.from)
  return { ...bar, from, to: Math.max(from, bar.to) }
}

const groupsOf = ({ bars }: TimelineChart): string[] => [
  ...new Set(bars.flatMap(({ group }) => (group === undefined ? [] : [group]))),
]

const rowNames_px = (rows: readonly string[]): number =>
  Math.min(widestRowName_px, Math.max(20, ...rows.map(row => textWidth(drawable(row), smallFont_px)))) + 20

const box = (place: Readonly<Record<string, number>>, ink: string): string =>
  element('rect', { ...place, rx: 3, fill: ink, 'fill-opacity': 0.25, stroke: ink, 'stroke-width': 1.5 })

/** From top to bottom, its name above it. */
const markLine = (
  { x, label }: Mark,
  at: (value: number) => number,
  { top, bottom }: Plot,
  { text }: Colours,
): string =>
  line([at(x), top], [at(x), bottom], { stroke: text, 'stroke-width': 1.5, 'stroke-dasharray': '4 3' }) +
  words(drawable(label), within(at(x), drawable(label)), top - 6)
