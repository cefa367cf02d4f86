// A chart to SVG, and to PNG for chats. What draws is loaded at the first picture, so that starting costs nothing.

import { fileURLToPath } from 'node:url'
import type { Chart } from '../chart.ts'
import { fontFamily, width_px } from './frame.ts'
import { linesHeight_px, linesOption } from './lines.ts'
import { encodePng } from './png.ts'
import { drawable } from './text.ts'
import { colours, type Theme } from './theme.ts'
import { timelineHeight_px, timelineOption } from './timeline.ts'

/** PNG pixels per picture pixel: sharp on a phone, and less where the bytes would be many. */
const scales = [2, 1.5, 1] as const
const most_bytes = 60_000

/** Path of a font of ours: no picture depends on the fonts of the system. */
export const fontFile = (name: string): string => fileURLToPath(import.meta.resolve(`dejavu-fonts-ttf/ttf/${name}`))

/**
 * The chart as SVG, 400 px wide, on an opaque ground of its own; its title and `alternative` are inside as
 * accessible text. The same chart and theme always give the same text.
 */
export async function drawSvg(chart: Chart, theme: Theme = 'light'): Promise<string> {
  const { renderSvg } = await import('./echarts.ts')
  const svg =
    chart.kind === 'lines'
      ? renderSvg(linesOption(chart, colours[theme]), width_px, linesHeight_px)
      : renderSvg(timelineOption(chart, colours[theme]), width_px, timelineHeight_px(chart))
  const words = `<title>${escapeXml(chart.title)}</title><desc>${escapeXml(chart.alternative)}</desc>`
  return svg.replace(/^<svg([^>]*)>/, (_, attributes) => `<svg${attributes} role="img">${words}`)
}

/** The chart as PNG, 800 px wide unless it is tall, in fonts of our own; the same bytes for the same chart and theme. */
export async function drawPng(chart: Chart, theme: Theme = 'light'): Promise<Buffer> {
  const [svg, { renderAsync }] = await Promise.all([drawSvg(chart, theme), import('@resvg/resvg-js')])
  const font = {
    loadSystemFonts: false,
    fontFiles: [fontFile('DejaVuSans.ttf'), fontFile('DejaVuSans-Bold.ttf')],
    defaultFontFamily: fontFamily,
  }
  for (const value of scales) {
    const png = encodePng(await renderAsync(svg, { fitTo: { mode: 'zoom', value }, font }))
    if (png.length <= most_bytes) return png
  }
  throw new RangeError(`the picture "${chart.title}" has too many bytes`)
}

const escapes: Readonly<Record<string, string>> = { '&': '&amp;', '<': '&lt;', '>': '&gt;' }
const escapeXml = (text: string): string => drawable(text).replace(/[&<>]/g, found => escapes[found] as string)
