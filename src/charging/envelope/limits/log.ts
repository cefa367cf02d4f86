// Limits on what the charges noted of a pack show: what it takes back, and what it has lost.

import type { Provenance } from '../../setting/limit.ts'
import { capacityLeft } from '../../upkeep/age-signs.ts'
import { mostPutBack } from '../../upkeep/charge-note.ts'
import { ages } from '../../upkeep/health.ts'
import type { Known } from './facts.ts'
import { above, below, cells, type Limits } from './row.ts'

const practised = ({ standing, source }: Provenance): string => `${standing}: ${source}`
/** The number itself breaks the limit too. */
const reached = (times: number): number => times - 1e-9

const mostCharge_A = ({ situation: { pack } }: Known) =>
  pack && (pack.labelRate_C ?? pack.chemistry.highestRate_C.value) * pack.capacity_Ah * (1 + 1e-9)

/** Most pressing first within a weight. */
export const logLimits = {
  putBackTooMuch: above('refuse', ['look'], 'putBackShare', 'percent', mostPutBack.value, practised(mostPutBack)),
  lostToStart: below('refuse', ['look'], 'startShare', 'percent', capacityLeft.value.retire, practised(capacityLeft)),
  lostToLabel: below('refuse', ['look'], 'labelShare', 'percent', capacityLeft.value.retire, practised(capacityLeft)),
  chargedTooFast: above('must', ['look'], 'charged_A', 'current', mostCharge_A, cells),
  faded: below('care', ['look'], 'startShare', 'percent', capacityLeft.value.ageing, practised(capacityLeft)),
  resistanceUp: above('care', ['look'], 'agedTimes', 'times', reached(ages.value.aged), practised(ages)),
} as const satisfies Limits
