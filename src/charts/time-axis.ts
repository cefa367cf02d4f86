// The time along a chart: in minutes, or in hours where minutes would be long numbers.

const longest_min = 300

export interface TimeAxis {
  readonly unit: 'minutes' | 'hours'
  /** A time in s in that unit. */
  at(time_s: number): number
}

export function timeAxis(end_s: number): TimeAxis {
  const [unit, unit_s] = end_s / 60 > longest_min ? (['hours', 3600] as const) : (['minutes', 60] as const)
  return { unit, at: time_s => time_s / unit_s }
}
