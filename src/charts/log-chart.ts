// A pack's log over time: what it takes, and the resistance of its cells, at each charge noted.

import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'
import type { LineChart, Series } from './chart.ts'
import { logChartWords, type Reading } from './log-chart.words.ts'

interface LogPoint {
  readonly at: Date
  /** Capacity worked out from the charge, in Ah. */
  readonly capacity_Ah?: number
  /** Of one cell, normalised as the log does, in ohm. */
  readonly cellResistance_ohm?: number
}

export interface LogChartRequest {
  readonly pack: Text
  /** In order of time. */
  readonly points: readonly LogPoint[]
  /** The capacity at which practice retires the pack, in Ah. */
  readonly retire_Ah?: number
  readonly locale: Locale
}

export function logChart({ pack, points, retire_Ah, locale }: LogChartRequest): LineChart {
  const words = logChartWords(locale)
  const capacity = readings(points, 'capacity_Ah')
  const resistance = readings(points, 'cellResistance_ohm')
  const series: Series[] = []
  const yLabels: Text[] = []
  if (capacity.length > 0) {
    series.push({ name: words.capacity, points: capacity, readings: true })
    yLabels.push(words.capacityUnit)
  }
  if (resistance.length > 0) {
    const axis = capacity.length > 0 ? 1 : 0
    series.push({ name: words.resistance, points: resistance, readings: true, axis })
    yLabels.push(words.resistanceUnit)
  }
  const retire = retire_Ah !== undefined && capacity.length > 0
  return {
    kind: 'lines',
    title: words.title(pack),
    xLabel: words.day,
    xScale: 'date',
    yLabels,
    series,
    level: retire ? { y: retire_Ah * 1000, label: words.retire(retire_Ah) } : undefined,
    decimalMark: locale.show.mark,
    alternative: words.alternative(pack, capacity, resistance),
  }
}

const readings = (points: readonly LogPoint[], key: 'capacity_Ah' | 'cellResistance_ohm'): Reading[] =>
  points.flatMap(point => {
    const value = point[key]
    return value === undefined ? [] : [[point.at.getTime(), value * 1000] as const]
  })
