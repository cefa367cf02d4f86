// What the chart of a source that is drained says.

import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'

export const drainChartWords = ({ say, show }: Locale) => ({
  title: (what: Text) => say`Source: ${what}`,
  volts: say`V under load`,
  source: say`source`,
  pack: (number: number) => say`pack ${show.number(number, 0)}`,
  numbered: (number: number) => show.number(number, 0),
  floor: (floor_V: number) => say`floor ${show.voltage(floor_V)}`,
  alternative: (what: Text, lowest_V: number, end_s: number, floor_V: number) =>
    say`${what}: the volts under load go down to ${show.voltage(lowest_V)} in ${show.roughly(end_s)}; the floor at which to stop is ${show.voltage(floor_V)}.`,
})
