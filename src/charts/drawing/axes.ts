// The axes of a picture: their lines, round numbers and names.

import type { Chart } from '../chart.ts'
import { fontSize_px, type Plot, width_px } from './frame.ts'
import type { Steps } from './scale.ts'
import { line, words } from './svg.ts'
import { drawable, fitted, textWidth } from './text.ts'
import type { Colours } from './theme.ts'

const tick_px = 5

interface Tick {
  readonly value: number
  readonly label: string
}

/** The numbers of an axis, in the chart's number format. */
export function ticksOf({ min, step, count }: Steps, { decimalMark = '.' }: Chart): Tick[] {
  const label = (value: number) => String(Number(value.toPrecision(6))).replace('.', decimalMark)
  return Array.from({ length: count + 1 }, (_, index) => min + index * step).map(value => ({
    value,
    label: label(value),
  }))
}

/** Along the bottom; of numbers that would touch, only every second or third is shown. */
export function bottomAxis(
  { title, ticks }: { title: string; ticks: readonly Tick[] },
  at: (value: number) => number,
  plot: Plot,
  { faint }: Colours,
): string {
  const { left, right, bottom } = plot
  const widest_px = Math.max(...ticks.map(({ label }) => textWidth(label, fontSize_px))) + 6
  const every = Math.ceil((widest_px * (ticks.length - 1)) / (right - left))
  const shown = ticks.filter((_, index) => index % every === 0)
  return [
    line([left, bottom], [right, bottom], { stroke: faint }),
    ...ticks.map(({ value }) => line([at(value), bottom], [at(value), bottom + tick_px], { stroke: faint })),
    ...shown.map(({ value, label }) => words(label, within(at(value), label), bottom + 18)),
    words(fitted(drawable(title), right - left, fontSize_px), (left + right) / 2, bottom + 36),
  ].join('')
}

/** The middle of a label that stays in the picture. */
export function within(at_px: number, label: string): number {
  const half_px = textWidth(label, fontSize_px) / 2 + 3
  return Math.max(half_px, Math.min(width_px - half_px, at_px))
}

/** At the left or the right side, its title along it. */
export function sideAxis(
  { title, ticks, side }: { title: string; ticks: readonly Tick[]; side: 'left' | 'right' },
  at: (value: number) => number,
  plot: Plot,
  { faint }: Colours,
): string {
  const x = plot[side]
  const outwards = side === 'left' ? -1 : 1
  const anchor = side === 'left' ? 'end' : 'start'
  const middle = (plot.top + plot.bottom) / 2
  const title_px = x + outwards * 41
  return [
    line([x, plot.top], [x, plot.bottom], { stroke: faint }),
    ...ticks.map(({ value }) => line([x, at(value)], [x + outwards * tick_px, at(value)], { stroke: faint })),
    ...ticks.map(({ value, label }) => words(label, x + outwards * 8, at(value) + 4, { 'text-anchor': anchor })),
    words(fitted(drawable(title), plot.bottom - plot.top, fontSize_px), title_px, middle, {
      transform: `rotate(${outwards * 90} ${title_px} ${middle})`,
    }),
  ].join('')
}
