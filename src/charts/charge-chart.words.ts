// What the chart of a charge says.

import type { Charge } from '../charging/simulation/charge.ts'
import type { Band } from '../charging/things/chemistry.ts'
import type { Locale } from '../ground/locale.ts'
import { joined, type Text } from '../ground/text.ts'
import { stageNames } from '../handbook/stages.words.ts'

export const chargeChartWords = (locale: Locale) => {
  const { say, show } = locale
  const span = ({ low, high }: Band) => say`${show.roughly(low, Math.floor)} to ${show.roughly(high, Math.ceil)}`
  return {
    title: (what: Text) => say`Charge: ${what}`,
    volts: say`volts per cell`,
    amps: say`amps`,
    ends: (end_s: Band) => say`ends after ${span(end_s)}`,
    alternative: (what: Text, { curve, stages }: Charge, end_s: Band) => {
      const [first, last] = [curve[0], curve.at(-1)]
      const parts = stages.map(({ kind, duration_s }) => say`${stageNames(locale)[kind]} ${show.roughly(duration_s)}`)
      return joined([
        first && last
          ? say`Charge of ${what}: volts per cell from ${show.perCell(first.perCell_V)} to ${show.perCell(last.perCell_V)}.`
          : say`Charge of ${what}.`,
        say`One after the other: ${joined(parts, ', ')}.`,
        say`It ends after ${span(end_s)}.`,
      ])
    },
  }
}
