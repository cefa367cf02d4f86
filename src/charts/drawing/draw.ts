// A chart to SVG, and to PNG for chats. What draws is loaded at the first picture, so that starting costs nothing.

import { fileURLToPath } from 'node:url'
import type { Chart } from '../chart.ts'
import { fontFamily } from './frame.ts'
import { linesSvg } from './lines.ts'
import { encodePng } from './png.ts'
import { colours, type Theme } from './theme.ts'
import { timelineSvg } from './timeline.ts'

/** PNG pixels per picture pixel: sharp on a phone, and less where the bytes would be many. */
const scales = [2, 1.5, 1] as const
const most_bytes = 60_000

/** Path of a font of ours: no picture depends on the fonts of the system. */
export const fontFile = (name: string): string => fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${name}`))

/** The chart as SVG, 400 px wide, on an opaque ground of its own. The same chart and theme always give the same text. */
export const drawSvg = (chart: Chart, theme: Theme = 'light'): string =>
  chart.kind === 'lines' ? linesSvg(chart, colours[theme]) : timelineSvg(chart, colours[theme])

/** The chart as PNG, 800 px wide unless it is tall, in fonts of our own; the same bytes for the same chart and theme. */
export async function drawPng(chart: Chart, theme: Theme = 'light'): Promise<Buffer> {
  const svg = drawSvg(chart, theme)
  const { Resvg } = await import('@resvg/resvg-js')
  const font = {
    loadSystemFonts: false,
    fontFiles: [fontFile('DejaVuSans.ttf'), fontFile('DejaVuSans-Bold.ttf')],
    defaultFontFamily: fontFamily,
  }
  for (const value of scales) {
    const png = encodePng(new Resvg(svg, { fitTo: { mode: 'zoom', value }, font }).render())
    if (png.length <= most_bytes) return png
  }
  throw new RangeError(`the picture "${chart.title}" has too many bytes`)
}
