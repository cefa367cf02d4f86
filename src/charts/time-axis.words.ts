// What the time along a chart is counted in.

import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'
import type { TimeAxis } from './time-axis.ts'

export const timeUnits = ({ say }: Locale): Readonly<Record<TimeAxis['unit'], Text>> => ({
  minutes: say`minutes`,
  hours: say`hours`,
})
