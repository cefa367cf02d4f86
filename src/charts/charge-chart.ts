// The curve of a charge: volts per cell and amps against time, its stages, and when it may end.

import type { Band, Charge, CurvePoint, Stage } from '../charging/simulation/charge.ts'
import type { Show } from '../ground/show.ts'
import type { LineChart, Mark } from './chart.ts'
import { type TimeAxis, timeAxis } from './time-axis.ts'

export interface ChargeChartRequest {
  /** What is charged and how: "3S 720mAh LiHV, 1 A to 4.35 V". */
  readonly what: string
  readonly charge: Charge
  /** When it may end, in s from the start. */
  readonly end_s: Band
  readonly show: Show
}

export function chargeChart({ what, charge, end_s, show }: ChargeChartRequest): LineChart {
  const axis = timeAxis(end_s.high)
  const span = `${show.duration(end_s.low)} to ${show.duration(end_s.high)}`
  return {
    kind: 'lines',
    title: `Charge: ${what}`,
    xLabel: axis.unit,
    yLabels: ['volts per cell', 'amps'],
    series: [
      { name: 'volts per cell', points: against(charge.curve, axis, ({ perCell_V }) => perCell_V) },
      { name: 'amps', points: against(charge.curve, axis, ({ current_A }) => current_A), axis: 1 },
    ],
    marks: stageEnds(charge.stages, axis),
    band: { from: axis.at(end_s.low), to: axis.at(end_s.high), label: `ends after ${span}` },
    decimalMark: show.mark,
    alternative: inWords(what, charge, span, show),
  }
}

const against = (
  curve: readonly CurvePoint[],
  axis: TimeAxis,
  y: (point: CurvePoint) => number,
): (readonly [number, number])[] => curve.map(point => [axis.at(point.time_s), y(point)])

function stageEnds(stages: readonly Stage[], axis: TimeAxis): Mark[] {
  let end_s = 0
  return stages.map(({ kind, duration_s }) => {
    end_s += duration_s
    return { x: axis.at(end_s), label: kind }
  })
}

function inWords(what: string, { curve, stages }: Charge, span: string, show: Show): string {
  const first = curve[0]
  const last = curve.at(-1)
  const volts =
    first && last ? `from ${show.perCell(first.perCell_V)} to ${show.perCell(last.perCell_V)}` : ''
  const parts = stages.map(({ kind, duration_s }) => `${kind} ${show.duration(duration_s)}`)
  return `Charge of ${what}: volts per cell ${volts}; ${parts.join(', then ')}. It ends after ${span}.`
}
