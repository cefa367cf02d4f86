// A lead of two wires, out and back: what it takes from the volts, and the thinnest gauge that will do.

import type { SourceLead } from '../situation/situation.ts'
import { mostCurrent_A, thickestGauge, thinnestGauge, wireResistance_ohm, wireRise_K } from './wire.ts'

export interface LeadLoad {
  /** From one end of the lead to the other; the current flows this far out and back. */
  readonly length_m: number
  readonly current_A: number
  readonly air_C: number
}

export function leadOf(gauge: number, { length_m, current_A, air_C }: LeadLoad) {
  const rise_K = wireRise_K(gauge, current_A, air_C)
  const cold_ohm = wireResistance_ohm(gauge, 2 * length_m, air_C)
  const warm_ohm = wireResistance_ohm(gauge, 2 * length_m, air_C + rise_K)
  return {
    resistance_ohm: cold_ohm,
    drop_V: current_A * cold_ohm,
    heat_W: current_A ** 2 * cold_ohm,
    /** Of the wire over the air. */
    rise_K,
    /** Drop and heat once the wire has warmed; Infinity where it would not stop warming. */
    warmDrop_V: current_A * warm_ohm,
    warmHeat_W: current_A ** 2 * warm_ohm,
  }
}

export type Lead = ReturnType<typeof leadOf>

/** Where nobody tells how warm the air is. */
export const usualAir_C = 20

/** A lead as a source is met behind it, cold: at the most that it bears for long it takes an eighth more. */
export const sourceLead = (gauge: number, length_m: number): SourceLead => ({
  resistance_ohm: wireResistance_ohm(gauge, 2 * length_m),
  most_A: mostCurrent_A(gauge, usualAir_C),
})

/** The thinnest gauge whose warm wire drops no more than `most_V` and stays within the rise that is allowed. */
export function thinnestLead(load: LeadLoad, most_V = Number.POSITIVE_INFINITY): number | undefined {
  for (let gauge = thinnestGauge; gauge >= thickestGauge; gauge--) {
    if (load.current_A <= mostCurrent_A(gauge, load.air_C) && leadOf(gauge, load).warmDrop_V <= most_V) return gauge
  }
  return undefined
}
