// A charge as a pilot notes it, and what it alone tells of the pack: capacity and resistance.

import { resistanceFactor } from '../simulation/resistance.ts'
import type { Band } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'
import type { State } from '../things/level.ts'
import type { Pack } from '../things/pack.ts'
import { meanOf } from './health.ts'
import { chargeAtRest } from './rest-charge.ts'

/** One charge as a pilot notes it. */
export interface ChargeNote {
  /** Put back into the whole pack, in Ah. */
  readonly charge_Ah: number
  /** Before the charge, at rest; where unknown the charge tells nothing of the capacity. */
  readonly from?: State
  readonly to: State
  /** At the end of the charge, in the order of the balance plug, in V. */
  readonly cells_V?: readonly number[]
  /** One value for all cells, or one a cell, in ohm. */
  readonly cells_ohm?: readonly number[]
  /** When the resistance was read, in °C; 25 when absent. */
  readonly temperature_C?: number
  /** Set on the charger, in A, and where the charge ended. */
  readonly current_A?: number
  readonly termination_A?: number
  /** Of the whole charge, and until the current began to fall, in s. */
  readonly duration_s?: number
  readonly timeToCutoff_s?: number
}

/** A smaller share of the capacity says too little of the whole. */
export const leastShare = practice(0.5, 'a charge of less than half the capacity tells little of the whole')

/** Of its label, the most that a sound pack takes back. */
export const mostPutBack = practice(
  1.1,
  'a sound pack takes back hardly more than its label; a charger set wrong, or a hurt cell, takes more',
)

/** What is left in doubt where the charge moved is known: as measured by a full cycle. */
const cycleSpread = 0.03

/** Undefined where the start is not known, or the charge moved, or may have moved, too small a share of the capacity. */
export function capacityReading(pack: Pack, { charge_Ah, from, to }: ChargeNote) {
  if (!from) return undefined
  const start = chargeIn(pack, from)
  const end = chargeIn(pack, to)
  const share = end.soc - start.soc
  const leastMoved = end.band.low - start.band.high
  if (share < leastShare.value || leastMoved < leastShare.value / 2) return undefined
  const capacity_Ah = charge_Ah / share
  const least_Ah = charge_Ah / (end.band.high - start.band.low)
  const most_Ah = charge_Ah / leastMoved
  return {
    capacity_Ah,
    band_Ah: {
      low: Math.min(least_Ah, capacity_Ah * (1 - cycleSpread)),
      high: Math.max(most_Ah, capacity_Ah * (1 + cycleSpread)),
    },
    /** Share of the capacity that the charge moved, 0 to 1. */
    share,
  }
}

export type CapacityReading = NonNullable<ReturnType<typeof capacityReading>>

/** A charge that ended at the full voltage has filled the pack; volts below it are taken as resting ones. */
function chargeIn({ chemistry }: Pack, state: State): { soc: number; band: Band } {
  if (state.kind === 'soc') return { soc: state.soc, band: { low: state.soc, high: state.soc } }
  const known = chemistry
  if (state.perCell_V >= known.full_V.value) return { soc: 1, band: { low: 1, high: 1 } }
  return chargeAtRest(known, state.perCell_V)
}

/** Mean resistance of a cell at 25 °C, in ohm. */
export function resistanceReading({ cells_ohm, temperature_C = 25 }: ChargeNote): number | undefined {
  if (!cells_ohm || cells_ohm.length === 0) return undefined
  return meanOf(cells_ohm) / resistanceFactor(temperature_C)
}

/** Whether a charge went to the full voltage, or to the gentler one that a house may choose. */
export function endsFull({ chemistry }: Pack, to: State): boolean {
  const { full_V, gentleFull_V = full_V } = chemistry
  return to.kind === 'soc' ? to.soc === 1 : to.perCell_V >= gentleFull_V.value
}
