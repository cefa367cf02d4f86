// Where the charger must stop by itself, as figures.

import { figure } from '../../src/assistant/quantified.ts'
import type { TimedCharge } from '../../src/charging/setting/timed-charge.ts'

export const stopFigures = ({ stops }: Pick<TimedCharge, 'stops'>) => [
  figure.capacity('stopCapacity', stops.capacity_Ah),
  figure.duration('stopTimer', stops.timer_s),
]
