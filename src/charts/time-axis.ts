// The time along a chart: in minutes, or in hours where minutes would be long numbers.

const longest_min = 300

/** `at` gives a time in s in its unit. */
export function timeAxis(end_s: number) {
  const [unit, unit_s] = end_s / 60 > longest_min ? (['hours', 3600] as const) : (['minutes', 60] as const)
  return { unit, at: (time_s: number) => time_s / unit_s }
}

export type TimeAxis = ReturnType<typeof timeAxis>
