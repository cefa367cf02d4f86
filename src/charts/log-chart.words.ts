// What the chart of a pack's log says.

import type { Locale } from '../ground/locale.ts'
import { joined, type Text } from '../ground/text.ts'

/** One reading: when, in ms since 1970, and in thousandths of its unit. */
export type Reading = readonly [time_ms: number, thousandths: number]

export const logChartWords = ({ say, show, own }: Locale) => {
  const capacity = say`capacity`
  const resistance = say`resistance of a cell`
  const day = (time_ms: number) => own(new Date(time_ms).toISOString().slice(0, 10))
  const change = (name: Text, values: readonly Reading[], text: (value: number) => Text) => {
    const [first, last] = [values[0], values.at(-1)]
    if (!first || !last) return undefined
    return say`${name} ${text(first[1] / 1000)} on ${day(first[0])}, ${text(last[1] / 1000)} on ${day(last[0])}`
  }
  return {
    title: (pack: Text) => say`Log of ${pack}`,
    day: say`day`,
    capacity,
    resistance,
    capacityUnit: own('mAh'),
    resistanceUnit: own('mΩ'),
    retire: (retire_Ah: number) => say`retire at ${show.capacity(retire_Ah)}`,
    alternative: (pack: Text, capacities: readonly Reading[], resistances: readonly Reading[]) =>
      joined(
        [
          say`Log of ${pack}`,
          change(capacity, capacities, show.capacity),
          change(resistance, resistances, show.resistance),
        ],
        '; ',
      ),
  }
}
