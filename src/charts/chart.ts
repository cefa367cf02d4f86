// What a chart shows, as data: commands describe it, a surface that can show pictures has it drawn.

export interface Series {
  readonly name: string
  /** Points as [x, y], x rising. */
  readonly points: readonly (readonly [number, number])[]
  /** Which of the chart's y axes it belongs to; 0 when absent. */
  readonly axis?: 0 | 1
  /** The points are single readings: each is drawn with a symbol. */
  readonly readings?: boolean
}

export interface Mark {
  readonly x: number
  readonly label: string
}

interface ChartFrame {
  readonly title: string
  readonly xLabel: string
  /** What stands between whole and fraction in the axis numbers; a point when absent. */
  readonly decimalMark?: '.' | ','
  /** What the picture says, in words. */
  readonly alternative: string
}

export interface LineChart extends ChartFrame {
  readonly kind: 'lines'
  /** With 'date', x is milliseconds since 1970 and the axis shows days in UTC; plain numbers when absent. */
  readonly xScale?: 'number' | 'date'
  /** One label a y axis, at most two. */
  readonly yLabels: readonly string[]
  readonly series: readonly Series[]
  /** Vertical lines that part the stages, each with the name of the stage that ends there. */
  readonly marks?: readonly Mark[]
  /** A span of x that is uncertain. */
  readonly band?: { readonly from: number; readonly to: number; readonly label: string }
  /** A horizontal line on an axis: a floor, or a limit. */
  readonly level?: { readonly y: number; readonly label: string; readonly axis?: 0 | 1 }
}

export interface TimelineBar {
  readonly row: string
  readonly from: number
  readonly to: number
  readonly label: string
  /** Bars of one group share a colour, and the legend names it. */
  readonly group?: string
}

export interface TimelineChart extends ChartFrame {
  readonly kind: 'timeline'
  /** From top to bottom. */
  readonly rows: readonly string[]
  readonly bars: readonly TimelineBar[]
  /** Moments across all rows, such as a time by which to be ready. */
  readonly marks?: readonly Mark[]
}

export type Chart = LineChart | TimelineChart
