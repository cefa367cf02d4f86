// A field session as a timeline: one row a pack in the order of their start, the ports told apart.

import type { Show } from '../ground/show.ts'
import type { TimelineChart } from './chart.ts'
import { timeAxis } from './time-axis.ts'

export interface PlannedCharge {
  readonly pack: string
  readonly port: string
  /** What to set: "1 A to 4.35 V". */
  readonly setting: string
  readonly start_s: number
  readonly end_s: number
}

export interface PlanChartRequest {
  readonly charges: readonly PlannedCharge[]
  /** The time by which to be ready, in s from the start. */
  readonly readyBy_s?: number
  readonly show: Show
}

export function planChart({ charges, readyBy_s, show }: PlanChartRequest): TimelineChart {
  const inOrder = [...charges].sort((a, b) => a.start_s - b.start_s)
  const end_s = Math.max(0, ...charges.map(charge => charge.end_s))
  const axis = timeAxis(Math.max(end_s, readyBy_s ?? 0))
  return {
    kind: 'timeline',
    title: `${charges.length === 1 ? '1 charge' : `${charges.length} charges`}, done after ${show.duration(end_s)}`,
    xLabel: `${axis.unit} from the start`,
    rows: [...new Set(inOrder.map(({ pack }) => pack))],
    bars: inOrder.map(({ pack, port, setting, start_s, end_s }) => ({
      row: pack,
      from: axis.at(start_s),
      to: axis.at(end_s),
      label: setting,
      group: port,
    })),
    ...(readyBy_s === undefined ? {} : { marks: [{ x: axis.at(readyBy_s), label: 'ready by' }] }),
    decimalMark: show.mark,
    alternative: inOrder
      .map(
        ({ pack, port, setting, start_s, end_s }) =>
          `${pack} on ${port}, ${setting}, ${show.duration(start_s)} to ${show.duration(end_s)}`,
      )
      .join('; '),
  }
}
