// What a flight controller counted as used, against what the charger put back: how to correct its current meter.

import type { Band } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'

/** One flight from full, and the charge back to full after it. */
export interface FlightCount {
  readonly counted_Ah: number
  readonly putBack_Ah: number
}

export interface MeterCorrection {
  /** Put back over counted: above 1 the meter reads low. */
  readonly ratio: number
  /** Between which the single flights lie. */
  readonly band: Band
  /** The new scale factor, where the present one is known; which of the two depends on the firmware. */
  readonly scale?: {
    /** Where a larger factor makes the meter read more. */
    readonly raising: number
    /** Where a larger factor makes it read less. */
    readonly lowering: number
  }
}

export const chargeGivenBack = practice(
  0.99,
  'a sound lithium pack gives back about 99 % of the mAh that a charge puts in',
)

/** Of its label, the most that a pilot uses in a flight. */
export const mostUsed = practice(0.8, 'pilots land with a fifth of the label left')

/** Long flights count for more than short ones. Undefined where there is none. */
export function meterCorrection(flights: readonly FlightCount[], scale?: number): MeterCorrection | undefined {
  if (flights.length === 0) return undefined
  const ratios = flights.map(({ putBack_Ah, counted_Ah }) => putBack_Ah / counted_Ah)
  const sum = (of: (flight: FlightCount) => number) => flights.reduce((all, flight) => all + of(flight), 0)
  const ratio = sum(({ putBack_Ah }) => putBack_Ah) / sum(({ counted_Ah }) => counted_Ah)
  return {
    ratio,
    band: { low: Math.min(...ratios), high: Math.max(...ratios) },
    scale: scale === undefined ? undefined : { raising: scale * ratio, lowering: scale / ratio },
  }
}
