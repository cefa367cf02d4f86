// How resistance and diffusion of a cell follow its temperature, and grow as it loses capacity.

import { computed } from '../things/cited.ts'
import { interpolate } from '../things/curve.ts'

/**
 * Resistance at a temperature over that at 25 °C: geometric middle of two published production battery
 * tables, straight in the logarithm between their temperatures.
 */
const byTemperature = { temperature_C: [-20, 0, 25, 40, 60], log: [11.26, 2.387, 1, 0.86, 0.8].map(Math.log) } as const

/** Resistance of a cell at `temperature_C` over its resistance at 25 °C; beyond -20 and 60 °C the end value holds. */
export function resistanceFactor(temperature_C: number): number {
  const within_C = Math.min(60, Math.max(-20, temperature_C))
  return Math.exp(interpolate(byTemperature.temperature_C, byTemperature.log, within_C))
}

/** Of its label, what a new cell holds. */
export const newShare = computed(
  0.93,
  'new cells of nine open datasets hold 0.90 to 1.11 of their label: below that it is age',
)

/** Diffusion slows as capacity goes, a reading hardly grows. In hours for the whole capacity lost. */
export const growth_h = computed(
  { middle: 1.1, times: 2.2 },
  'charges of cells as they aged: 0.5 (NASA PCoE B0005) and 1.5 (HKUST H24), least error over both at 1.1',
)

/** What age has added to the diffusion of a cell that holds `share` of its label, in hours. */
export const agedBy_h = (share: number, whenNew: number = newShare.value, growth = growth_h.value.middle): number =>
  growth * Math.max(0, whenNew - share)
