// Limits on what the charges noted of a pack show: what it takes back, and what it has lost.

import { capacityLeft } from '../../upkeep/age-signs.ts'
import { mostPutBack } from '../../upkeep/charge-note.ts'
import { mostUsed } from '../../upkeep/flight-meter.ts'
import { ages } from '../../upkeep/health.ts'
import type { Known } from './facts.ts'
import { above, below, cells, type Limits, reached, saidBy } from './row.ts'

const mostCharge_A = ({ situation: { pack } }: Known) =>
  pack && (pack.labelRate_C ?? pack.chemistry.highestRate_C.value) * pack.capacity_Ah * (1 + 1e-9)

/** Most pressing first within a weight. */
export const logLimits = {
  putBackTooMuch: above('refuse', ['look'], 'putBackShare', saidBy(mostPutBack), mostPutBack.value),
  lostToStart: below('refuse', ['look'], 'startShare', saidBy(capacityLeft), capacityLeft.value.retire),
  lostToLabel: below('refuse', ['look'], 'labelShare', saidBy(capacityLeft), capacityLeft.value.retire),
  chargedTooFast: above('must', ['look'], 'charged_A', cells, mostCharge_A),
  usedDeep: above('care', ['look'], 'usedShare', saidBy(mostUsed), mostUsed.value + 1e-9),
  faded: below('care', ['look'], 'startShare', saidBy(capacityLeft), capacityLeft.value.ageing),
  resistanceUp: above('care', ['look'], 'agedTimes', saidBy(ages), reached(ages.value.aged)),
} as const satisfies Limits
