// Where a charger stops by itself, should it not see the end of the charge.

import { practice } from '../things/cited.ts'
import type { Pack } from '../things/pack.ts'

/** Over the label, for what the charge itself loses. */
const stopCapacityShare = practice(1.1, 'a tenth above the label is more than a sound pack takes')
/** Over the long end of the time. */
const stopTimeShare = practice(1.25, 'a quarter above the longest time')
/** Timers are set in such steps; rounded up, so that none ends a sound charge. */
const timerStep_s = 300

export const chargerStops = ({ capacity_Ah }: Pick<Pack, 'capacity_Ah'>, longest_s: number) => ({
  capacity_Ah: capacity_Ah * stopCapacityShare.value,
  timer_s: Math.ceil((longest_s * stopTimeShare.value) / timerStep_s) * timerStep_s,
})

export type ChargerStops = ReturnType<typeof chargerStops>
