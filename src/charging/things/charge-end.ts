// At which current a charger ends by itself, where that goes by its set current or by the capacity that it was told.

import { practice } from './cited.ts'

/** In the order in which chargers have them; a tenth of the set current is meant where none is told. */
export const chargeEnds = ['tenth', 'C/10', 'twentieth', 'C/20'] as const
type UsualEnd = (typeof chargeEnds)[number]
/** Beside them: one that holds no volts, and halves its current each time they are reached, as long as it is a tenth of the set one. */
export const allEnds = [...chargeEnds, 'steps'] as const
export type ChargeEnd = (typeof allEnds)[number]

/** Of the chargers whose end nobody told, so many have each or one before it. */
const usualEnds = practice<Readonly<Record<UsualEnd, number>>>(
  { tenth: 0.6, 'C/10': 0.75, twentieth: 0.95, 'C/20': 1 },
  'most field chargers end at a tenth of the set current, some at a twentieth or by the capacity',
)

/** In A. By the capacity only as far as the set current: a slow charge would end before its taper had begun. */
export function endCurrent_A(end: ChargeEnd, set_A: number, capacity_Ah: number): number {
  const of_A = end.startsWith('C') ? Math.min(set_A, capacity_Ah) : set_A
  return of_A / (end === 'twentieth' || end === 'C/20' ? 20 : 10)
}

/** The end of a charger where so large a share of them comes before it. */
export const endAt = (share: number): UsualEnd => chargeEnds.find(end => share < usualEnds.value[end]) ?? 'C/20'
