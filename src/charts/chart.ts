// What a chart shows, as data: commands describe it, a surface that can show pictures has it drawn.

import type { Text } from '../ground/text.ts'

export interface Series {
  readonly name: Text
  /** Points as [x, y], x rising. */
  readonly points: readonly (readonly [number, number])[]
  /** Which of the chart's y axes it belongs to; 0 when absent. */
  readonly axis?: 0 | 1
  /** The points are single readings: each is drawn with a symbol. */
  readonly readings?: boolean
}

export interface Mark {
  readonly x: number
  readonly label: Text
}

interface ChartFrame {
  readonly title: Text
  readonly xLabel: Text
  /** What stands between whole and fraction in the axis numbers; a point when absent. */
  readonly decimalMark?: '.' | ','
  /** What the picture says, in words. */
  readonly alternative: Text
}

export interface LineChart extends ChartFrame {
  readonly kind: 'lines'
  /** With 'date', x is milliseconds since 1970 and the axis shows days in UTC; plain numbers when absent. */
  readonly xScale?: 'number' | 'date'
  /** One label a y axis, at most two. */
  readonly yLabels: readonly Text[]
  readonly series: readonly Series[]
  /** Vertical lines that part the stages, each with the name of the stage that ends there. */
  readonly marks?: readonly Mark[]
  /** A span of x that is uncertain. */
  readonly band?: { readonly from: number; readonly to: number; readonly label: Text }
  /** A horizontal line on an axis: a floor, or a limit. */
  readonly level?: { readonly y: number; readonly label: Text; readonly axis?: 0 | 1 }
}

export interface TimelineBar {
  readonly row: Text
  readonly from: number
  readonly to: number
  readonly label: Text
  /** Bars of one group share a colour, and the legend names it. */
  readonly group?: Text
}

export interface TimelineChart extends ChartFrame {
  readonly kind: 'timeline'
  /** From top to bottom. */
  readonly rows: readonly Text[]
  readonly bars: readonly TimelineBar[]
  /** Moments across all rows, such as a time by which to be ready. */
  readonly marks?: readonly Mark[]
}

export type Chart = LineChart | TimelineChart
