// From resting volts to charge and back, each with how far real cells and a meter lie apart.

import { firstWhere } from '../numbers/halving.ts'
import { socBandAt } from '../things/charge-fraction.ts'
import type { Band, Chemistry } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'
import { restingVoltage, socAt } from '../things/curve.ts'

/** How far the reading of a pocket voltmeter may be off one cell, in V. */
export const meterError_V = practice(0.01, 'a cell checker is good to about 0.01 V')

/** So much charge within the error of a meter: there the curve is flat. */
const flatSoc = 0.12
/** So much charge between cells of a kind: there they are too unlike for more than a rough guess. */
const unlikeSoc = 0.35

/** How much volts tell of the charge. */
export type Telling = 'well' | 'roughly' | 'flat'

export interface RestCharge {
  /** 0 to 1. */
  readonly soc: number
  readonly band: Band
  readonly perCell_V: number
  readonly telling: Telling
}

export function chargeAtRest(chemistry: Chemistry, perCell_V: number): RestCharge {
  const [less_V, more_V] = [perCell_V - meterError_V.value, perCell_V + meterError_V.value]
  const { low } = socBandAt(chemistry, less_V)
  const { high } = socBandAt(chemistry, more_V)
  const isFlat = socAt(chemistry, more_V) - socAt(chemistry, less_V) > flatSoc
  const telling = isFlat ? 'flat' : high - low > unlikeSoc ? 'roughly' : 'well'
  return { soc: socAt(chemistry, perCell_V), band: { low, high }, perCell_V, telling }
}

/** Resting volts of one cell at a state of charge of 0 to 1, and between which real cells with this charge rest. */
export function voltsAtRest(chemistry: Chemistry, soc: number) {
  const perCell_V = restingVoltage(chemistry, soc)
  const full_V = chemistry.full_V.value
  const reached = (side: 'low' | 'high') =>
    firstWhere(chemistry.damage_V.value, full_V, 30, volts => socBandAt(chemistry, volts)[side] >= soc - 1e-9)
  // The cell with most charge at some volts needs the least volts for this charge.
  return { perCell_V, band: { low: Math.min(perCell_V, reached('high')), high: Math.max(perCell_V, reached('low')) } }
}
