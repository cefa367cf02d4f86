// A field session as a timeline: one row a pack in the order of their start, the ports told apart.

import type { Locale } from '../ground/locale.ts'
import type { TimelineChart } from './chart.ts'
import { planChartWords } from './plan-chart.words.ts'
import type { PlannedCharge } from './planned-charge.ts'
import { timeAxis } from './time-axis.ts'

export interface PlanChartRequest {
  readonly charges: readonly PlannedCharge[]
  /** The time by which to be ready, in s from the start. */
  readonly readyBy_s?: number
  readonly locale: Locale
}

export function planChart({ charges, readyBy_s, locale }: PlanChartRequest): TimelineChart {
  const inOrder = [...charges].sort((a, b) => a.start_s - b.start_s)
  const end_s = Math.max(0, ...charges.map(charge => charge.end_s))
  const axis = timeAxis(Math.max(end_s, readyBy_s ?? 0))
  const words = planChartWords(locale)
  return {
    kind: 'timeline',
    title: words.title(charges.length, end_s),
    xLabel: words.fromStart(axis.unit),
    rows: [...new Set(inOrder.map(({ pack }) => pack))],
    bars: inOrder.map(({ pack, port, setting, start_s, end_s }) => ({
      row: pack,
      from: axis.at(start_s),
      to: axis.at(end_s),
      label: setting,
      group: port,
    })),
    marks: readyBy_s === undefined ? undefined : [{ x: axis.at(readyBy_s), label: words.readyBy }],
    decimalMark: locale.show.mark,
    alternative: words.alternative(inOrder),
  }
}
