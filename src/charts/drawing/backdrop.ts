// What stands behind the lines of a chart: its stages, the uncertain span, and a level.

import type { LineChart, Mark } from '../chart.ts'
import { type Plot, smallFont_px, width_px } from './frame.ts'
import type { Span } from './scale.ts'
import { element, line, words } from './svg.ts'
import { drawable, textWidth } from './text.ts'
import type { Colours } from './theme.ts'

/** Every second stage lightly shaded, its name above it. */
export function stagesLayer(
  marks: readonly Mark[],
  start: number,
  x: (value: number) => number,
  { top, bottom }: Plot,
  { stage, faint }: Colours,
): string {
  const starts = [start, ...marks.map(mark => mark.x)]
  const stages = marks.map((mark, index): Span => [x(starts[index] as number), x(mark.x)])
  const names = marks.map(({ label }) => drawable(label))
  const middles_px = sideBySide(
    stages.map(([from, to]) => (from + to) / 2),
    names.map(name => textWidth(name, smallFont_px)),
  )
  const shaded = stages.filter((_, index) => index % 2 === 1)
  const name = { 'font-size': smallFont_px, fill: faint }
  return [
    ...shaded.map(span => shade(span, top, bottom, stage)),
    ...stages.map(([, to]) => line([to, top], [to, bottom], { stroke: faint, 'stroke-dasharray': '3 3' })),
    ...names.map((text, index) => words(text, middles_px[index] as number, top - 6, name)),
  ].join('')
}

export const bandLayer = (
  { from, to }: NonNullable<LineChart['band']>,
  x: (value: number) => number,
  { top, bottom }: Plot,
  { band }: Colours,
): string => shade([x(from), x(to)], top, bottom, band)

const shade = ([from, to]: Span, top: number, bottom: number, fill: string): string =>
  element('rect', { x: Math.min(from, to), y: top, width: Math.abs(to - from), height: bottom - top, fill })

export const levelLine = ([left, right]: Span, y: number, { text }: Colours): string =>
  line([left, y], [right, y], { stroke: text, 'stroke-width': 1.5, 'stroke-dasharray': '1.5 1.5' })

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
