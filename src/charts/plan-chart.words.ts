// What the chart of a field session says.

import type { Locale } from '../ground/locale.ts'
import { joined, type Text } from '../ground/text.ts'
import type { PlannedCharge } from './planned-charge.ts'
import type { TimeAxis } from './time-axis.ts'
import { timeUnits } from './time-axis.words.ts'

export const planChartWords = (locale: Locale) => {
  const { say, show } = locale
  return {
    title: (charges: number, end_s: number): Text =>
      charges === 1
        ? say`1 charge, done after ${show.roughly(end_s, Math.ceil)}`
        : say`${show.number(charges, 0)} charges, done after ${show.roughly(end_s, Math.ceil)}`,
    fromStart: (unit: TimeAxis['unit']) => say`${timeUnits(locale)[unit]} from the start`,
    readyBy: say`ready by`,
    alternative: (charges: readonly PlannedCharge[]) =>
      joined(
        charges.map(
          ({ pack, port, setting, start_s, end_s }) =>
            say`${pack} on ${port}, ${setting}, ${show.roughly(start_s)} to ${show.roughly(end_s)}`,
        ),
        '; ',
      ),
  }
}
