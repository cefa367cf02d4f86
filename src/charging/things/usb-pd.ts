// What a USB Power Delivery supply of a given power offers: the power rules of the standard.

import type { Offer } from './source.ts'

/** USB Power Delivery Specification R3.x, power rules; IEC 62680-1-2:2022. */
const standardVoltages_V = [5, 9, 15, 20] as const
const extendedVoltages_V = [28, 36, 48] as const

/** Least source power at which a standard voltage appears among the offers, in W. */
const threshold_W: Record<number, number> = { 5: 0, 9: 15, 15: 27, 20: 45, 28: 100, 36: 140, 48: 180 }

/**
 * The fixed offers of a USB PD supply of `power_W` (0.5 to 240 W), lowest voltage first.
 * Up to 3 A each; 20 V carries up to 5 A above 60 W with an e-marked cable, and 28, 36 and 48 V
 * carry up to 5 A with an extended-power cable.
 */
export function pdOffers(power_W: number): Offer[] {
  return [...standardVoltages_V, ...extendedVoltages_V]
    .filter(voltage_V => power_W > (threshold_W[voltage_V] ?? 0))
    .map(voltage_V => ({ voltage_V, current_A: Math.min(power_W / voltage_V, voltage_V >= 20 ? 5 : 3) }))
}
