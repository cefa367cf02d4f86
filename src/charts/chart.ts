// What a chart shows, as data: commands describe it, a surface that can show pictures has it drawn.

export interface Series {
  readonly name: string
  /** Points as [x, y]. */
  readonly points: readonly (readonly [number, number])[]
  /** Which of the chart's y axes it belongs to; 0 when absent. */
  readonly axis?: 0 | 1
}

export interface LineChart {
  readonly kind: 'lines'
  readonly title: string
  readonly xLabel: string
  /** One label a y axis, at most two. */
  readonly yLabels: readonly string[]
  readonly series: readonly Series[]
  /** Vertical lines that part the stages, each with the name of the stage that ends there. */
  readonly marks?: readonly { readonly x: number; readonly label: string }[]
  /** A span of x that is uncertain. */
  readonly band?: { readonly from: number; readonly to: number; readonly label: string }
  /** What the picture says, in words. */
  readonly alternative: string
}

export interface TimelineChart {
  readonly kind: 'timeline'
  readonly title: string
  readonly xLabel: string
  readonly rows: readonly string[]
  readonly bars: readonly {
    readonly row: string
    readonly from: number
    readonly to: number
    readonly label: string
  }[]
  readonly alternative: string
}

export type Chart = LineChart | TimelineChart
