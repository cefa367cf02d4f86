// What every picture has: its size, fonts, title and axis style. Sizes are for a phone: 400 px across.

import type { Chart } from '../chart.ts'
import { drawable, textWidth } from './text.ts'
import type { Colours } from './theme.ts'

export const width_px = 400
export const fontFamily = 'DejaVu Sans'
export const fontSize_px = 12
export const smallFont_px = 11
const titleFont_px = 14
const margin_px = 12
const lineHeight_px = 18
const legendGap_px = 10
const legendMarker_px = 28
const legendText_px = 5

/** Height of the title, in px: long ones break into lines. */
export function titleHeight_px({ title }: Chart): number {
  const lines = Math.ceil(textWidth(drawable(title), titleFont_px, true) / (width_px - 2 * margin_px))
  return margin_px + Math.max(1, lines) * lineHeight_px
}

export function frame(chart: Chart, { background, text }: Colours) {
  return {
    animation: false,
    useUTC: true,
    backgroundColor: background,
    textStyle: { fontFamily, fontSize: fontSize_px, color: text },
    title: {
      text: drawable(chart.title),
      left: margin_px,
      top: margin_px,
      padding: 0,
      textStyle: {
        color: text,
        fontFamily,
        fontSize: titleFont_px,
        fontWeight: 'bold',
        lineHeight: lineHeight_px,
        width: width_px - 2 * margin_px,
        overflow: 'break',
      },
    },
  }
}

/** Height of the legend, in px: entries that do not fit a row go on in the next. */
export function legendHeight_px(names: readonly string[]): number {
  let rows = names.length > 0 ? 1 : 0
  let at_px = 0
  for (const name of names) {
    const entry_px = legendMarker_px + legendText_px + textWidth(name, fontSize_px)
    if (at_px > 0 && at_px + entry_px > width_px - 2 * margin_px) {
      rows += 1
      at_px = 0
    }
    at_px += entry_px + legendGap_px
  }
  return rows * (fontSize_px + legendGap_px)
}

/** A legend of entries in a row under the title. */
export function legend(top_px: number, entries: readonly object[], { text }: Colours) {
  return {
    left: margin_px,
    top: top_px,
    width: width_px - 2 * margin_px,
    padding: 0,
    itemGap: legendGap_px,
    itemWidth: legendMarker_px,
    itemHeight: 10,
    selectedMode: false,
    textStyle: { color: text, fontFamily, fontSize: fontSize_px },
    data: entries,
  }
}

export function axisStyle({ text, grid, faint }: Colours) {
  return {
    axisLine: { show: true, onZero: false, lineStyle: { color: faint } },
    axisTick: { show: true, lineStyle: { color: faint } },
    splitLine: { show: true, lineStyle: { color: grid } },
    axisLabel: { color: text, fontFamily, fontSize: fontSize_px, hideOverlap: true },
    nameTextStyle: { color: text, fontFamily, fontSize: fontSize_px },
    nameGap: 26,
  }
}

/** Axis numbers in the chart's number format. */
export function tick({ decimalMark = '.' }: Chart): (value: number) => string {
  return value => String(Number(value.toPrecision(6))).replace('.', decimalMark)
}

/** A round step (1, 2 or 5 times a power of ten) that parts `span` into at most seven. */
export function roundStep(span: number): number {
  const power = 10 ** Math.floor(Math.log10(span / 7))
  return [1, 2, 5, 10].map(multiple => multiple * power).find(step => span / step <= 7) as number
}
