// The curve of a charge: volts per cell and amps against time, its stages, and when it may end.

import type { Charge, CurvePoint, Stage } from '../charging/simulation/charge.ts'
import type { Band } from '../charging/things/chemistry.ts'
import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'
import { stageNames } from '../handbook/stages.words.ts'
import { chargeChartWords } from './charge-chart.words.ts'
import type { LineChart, Mark } from './chart.ts'
import { type TimeAxis, timeAxis } from './time-axis.ts'
import { timeUnits } from './time-axis.words.ts'

export interface ChargeChartRequest {
  /** What is charged and how: "3S 720mAh LiHV, 1 A to 4.35 V". */
  readonly what: Text
  readonly charge: Charge
  /** When it may end, in s from the start. */
  readonly end_s: Band
  readonly locale: Locale
}

export function chargeChart({ what, charge, end_s, locale }: ChargeChartRequest): LineChart {
  const axis = timeAxis(end_s.high)
  const words = chargeChartWords(locale)
  return {
    kind: 'lines',
    title: words.title(what),
    xLabel: timeUnits(locale)[axis.unit],
    yLabels: [words.volts, words.amps],
    series: [
      { name: words.volts, points: against(charge.curve, axis, ({ perCell_V }) => perCell_V) },
      { name: words.amps, points: against(charge.curve, axis, ({ current_A }) => current_A), axis: 1 },
    ],
    marks: stageEnds(charge.stages, axis, locale),
    band: { from: axis.at(end_s.low), to: axis.at(end_s.high), label: words.ends(end_s) },
    decimalMark: locale.show.mark,
    alternative: words.alternative(what, charge, end_s),
  }
}

const against = (
  curve: readonly CurvePoint[],
  axis: TimeAxis,
  y: (point: CurvePoint) => number,
): (readonly [number, number])[] => curve.map(point => [axis.at(point.time_s), y(point)])

function stageEnds(stages: readonly Stage[], axis: TimeAxis, locale: Locale): Mark[] {
  const names = stageNames(locale)
  let end_s = 0
  return stages.map(({ kind, duration_s }) => {
    end_s += duration_s
    return { x: axis.at(end_s), label: names[kind] }
  })
}
