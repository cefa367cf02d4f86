// A pack's log over time: what it takes, and the resistance of its cells, at each charge noted.

import type { Show } from '../ground/show.ts'
import type { LineChart, Series } from './chart.ts'

export interface LogPoint {
  readonly at: Date
  /** Capacity worked out from the charge, in Ah. */
  readonly capacity_Ah?: number
  /** Of one cell, normalised as the log does, in ohm. */
  readonly cellResistance_ohm?: number
}

export interface LogChartRequest {
  readonly pack: string
  /** In order of time. */
  readonly points: readonly LogPoint[]
  /** The capacity at which practice retires the pack, in Ah. */
  readonly retire_Ah?: number
  readonly show: Show
}

export function logChart({ pack, points, retire_Ah, show }: LogChartRequest): LineChart {
  const capacity = readings(points, 'capacity_Ah')
  const resistance = readings(points, 'cellResistance_ohm')
  const series: Series[] = []
  const yLabels: string[] = []
  if (capacity.length > 0) {
    series.push({ name: 'capacity', points: capacity, readings: true })
    yLabels.push('mAh')
  }
  if (resistance.length > 0) {
    const axis = capacity.length > 0 ? 1 : 0
    series.push({ name: 'resistance of a cell', points: resistance, readings: true, axis })
    yLabels.push('mΩ')
  }
  const retire = retire_Ah !== undefined && capacity.length > 0
  return {
    kind: 'lines',
    title: `Log of ${pack}`,
    xLabel: 'day',
    xScale: 'date',
    yLabels,
    series,
    ...(retire ? { level: { y: retire_Ah * 1000, label: `retire at ${show.capacity(retire_Ah)}` } } : {}),
    decimalMark: show.mark,
    alternative: [
      `Log of ${pack}`,
      change('capacity', capacity, thousandths => show.capacity(thousandths / 1000)),
      change('resistance of a cell', resistance, thousandths => show.resistance(thousandths / 1000)),
    ]
      .filter(part => part !== '')
      .join('; '),
  }
}

type Reading = readonly [time_ms: number, thousandths: number]

const readings = (points: readonly LogPoint[], key: 'capacity_Ah' | 'cellResistance_ohm'): Reading[] =>
  points.flatMap(point => {
    const value = point[key]
    return value === undefined ? [] : [[point.at.getTime(), value * 1000] as const]
  })

function change(name: string, values: readonly Reading[], text: (thousandths: number) => string): string {
  const first = values[0]
  const last = values.at(-1)
  if (!first || !last) return ''
  return `${name} ${text(first[1])} on ${day(first[0])}, ${text(last[1])} on ${day(last[0])}`
}

const day = (time_ms: number): string => new Date(time_ms).toISOString().slice(0, 10)
