// What every picture has: its size, fonts, title and legend. Sizes are for a phone: 400 px across.

import type { Chart } from '../chart.ts'
import { element, escaped, words } from './svg.ts'
import { drawable, fitted, textWidth, wrapped } from './text.ts'
import type { Colours } from './theme.ts'

export const width_px = 400
export const fontFamily = 'DejaVu Sans'
export const fontSize_px = 12
export const smallFont_px = 11.5
const titleFont_px = 14
const margin_px = 12
const titleLine_px = 18
const legendLine_px = 22
export const swatch_px = 28

/** Where the data are drawn. */
export interface Plot {
  readonly left: number
  readonly right: number
  readonly top: number
  readonly bottom: number
}

export interface LegendEntry {
  readonly name: string
  /** SVG as wide as a swatch, about the point 0, 0. */
  readonly swatch: string
}

/** The title and under it the legend, and where they end. */
export function heading(chart: Chart, entries: readonly LegendEntry[]): { drawn: string; end_px: number } {
  const inner_px = width_px - 2 * margin_px
  const lines = wrapped(drawable(chart.title), inner_px, titleFont_px)
  const bold = { 'text-anchor': 'start', 'font-size': titleFont_px, 'font-weight': 'bold' }
  const title = lines.map((text, index) => words(text, margin_px, margin_px + 13 + index * titleLine_px, bold))
  const title_px = margin_px + lines.length * titleLine_px
  const legend: string[] = []
  let [x, row] = [margin_px, 0]
  for (const { name, swatch } of entries) {
    const text = fitted(drawable(name), inner_px - swatch_px - 5, fontSize_px)
    const entry_px = swatch_px + 5 + textWidth(text, fontSize_px)
    if (x > margin_px && x + entry_px > width_px - margin_px) [x, row] = [margin_px, row + 1]
    const inside = swatch + words(text, swatch_px + 5, 4, { 'text-anchor': 'start' })
    legend.push(element('g', { transform: `translate(${x} ${title_px + 10 + row * legendLine_px})` }, inside))
    x = Math.ceil(x + entry_px + 10)
  }
  const legend_px = entries.length > 0 ? (row + 1) * legendLine_px : 0
  return { drawn: [...title, ...legend].join(''), end_px: title_px + legend_px }
}

/** The whole picture; its title and alternative are inside as accessible text. */
export function picture(chart: Chart, height_px: number, colours: Colours, layers: readonly string[]): string {
  const size = { width: width_px, height: height_px }
  return element(
    'svg',
    {
      xmlns: 'http://www.w3.org/2000/svg',
      ...size,
      viewBox: `0 0 ${width_px} ${height_px}`,
      role: 'img',
      'font-family': fontFamily,
      'font-size': fontSize_px,
      fill: colours.text,
    },
    [
      element('title', {}, escaped(chart.title)),
      element('desc', {}, escaped(chart.alternative)),
      element('rect', { ...size, fill: colours.background }),
      ...layers,
    ].join('\n'),
  )
}
