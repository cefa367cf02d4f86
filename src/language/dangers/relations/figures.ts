// What the numbers of a message amount to, whatever words stand around them: how full a cell reads, how far readings lie
// apart, how fast amps are for the capacity, how short a time is.

import { capacityIn, countIn, type Value } from './values.ts'

/** The upper ends of ranges within which a number means the same. */
const ends = {
  cell_V: [2, 2.9, 3.25, 3.6, 3.78, 3.9, 4.1, 4.215, 4.345, 4.7],
  apart_V: [0.03, 0.095, 0.3],
  rate_C: [0.3, 1.1, 2.1, 6, 200],
  time_min: [6, 12, 25, 59],
  air_C: [0, 5, 35, 45],
  percent: [5, 35, 65, 94],
  share: [0.5, 0.97, 1.04, 1.9],
} as const

/** Names of the ranges, each once. */
export function figuresIn(values: readonly Value[]): readonly string[] {
  const count = countIn(values)
  const capacity_mAh = capacityIn(values)
  const figures = new Set<string>()
  const add = (of: keyof typeof ends, value: number) => figures.add(`${of} ${ends[of].findIndex(end => value <= end)}`)
  const cells_V = values.flatMap(value => cellVolts(value, count))
  for (const cell_V of cells_V) add('cell_V', cell_V)
  if (cells_V.length > 1) add('apart_V', Math.max(...cells_V) - Math.min(...cells_V))
  for (const { kind, value, chemistry } of values) {
    if (kind === 'amps' && capacity_mAh !== undefined) add('rate_C', (1000 * value) / capacity_mAh)
    if (kind === 'rate') add('rate_C', value)
    if (kind === 'minutes') add('time_min', value)
    if (kind === 'celsius') add('air_C', value)
    if (kind === 'percent') add('percent', value)
    if (kind === 'chemistry') figures.add(`of ${chemistry}`)
    const isCharge = kind === 'mAh' || (kind === 'bare' && Number.isInteger(value))
    if (isCharge && value >= 100 && capacity_mAh !== undefined && value !== capacity_mAh)
      add('share', value / capacity_mAh)
  }
  if (new Set(values.flatMap(one => (one.kind === 'count' ? [one.value] : []))).size > 1) figures.add('counts')
  if (new Set(values.flatMap(({ chemistry }) => chemistry ?? [])).size > 1) figures.add('chemistries')
  return [...figures]
}

/** Volts that a cell may have, as they stand or shared among the cells of the pack. */
function cellVolts({ kind, value }: Value, count: number | undefined): number[] {
  if (kind !== 'volts' && (kind !== 'bare' || Number.isInteger(value))) return []
  if (value > 0.5 && value < 4.7) return [value]
  const shared = value / (count ?? 1)
  return shared > 1 && shared < 4.7 ? [shared] : []
}
