// Where the label of a bar goes: so that it can be read and runs over no other bar.

import type { TimelineBar, TimelineChart } from '../chart.ts'
import { smallFont_px } from './frame.ts'
import { drawable, fitted, textWidth } from './text.ts'

const gap_px = 3

/**
 * Inside the bar where it fits, else beside it where that is free, else as much as fits inside. The axis
 * goes from 0 to `max`, `perUnit_px` a unit.
 */
export function placeLabel(bar: TimelineBar, chart: TimelineChart, perUnit_px: number, max: number) {
  const text = drawable(bar.label)
  const needed_px = textWidth(text, smallFont_px) + 2 * gap_px
  const inside_px = (bar.to - bar.from) * perUnit_px
  if (needed_px <= inside_px) return { text, at_px: gap_px, outside: false }
  const others = chart.bars.filter(other => other !== bar && other.row === bar.row)
  const taken = others.map(({ from, to }) => [from, to] as const)
  const marked = (chart.marks ?? []).map(({ x }) => [x, x] as const)
  // A label on a mark's line is better than half a label.
  for (const obstacles of [[...taken, ...marked], taken]) {
    const next = Math.min(max, ...obstacles.map(([from]) => from).filter(from => from >= bar.to))
    const previous = Math.max(0, ...obstacles.map(([, to]) => to).filter(to => to <= bar.from))
    if (needed_px <= (next - bar.to) * perUnit_px) return { text, at_px: inside_px + gap_px, outside: true }
    if (needed_px <= (bar.from - previous) * perUnit_px) {
      return { text, at_px: gap_px - needed_px, outside: true }
    }
  }
  return { text: fitted(text, inside_px - 2 * gap_px, smallFont_px), at_px: gap_px, outside: false }
}

export type Placed = ReturnType<typeof placeLabel>
