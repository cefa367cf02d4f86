// Names of the figures that say where the charger must stop by itself.

import type { Locale } from '../../src/ground/locale.ts'

export const stopFigureNames = ({ say }: Locale) => ({
  stopCapacity: say`charger's own stop by mAh`,
  stopTimer: say`charger's own stop by time`,
})
