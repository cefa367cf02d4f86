// At which current a charger ends by itself, where that goes by its set current or by the capacity that it was told.

import { practice } from './cited.ts'

/** In the order in which chargers have them; a tenth of the set current is meant where none is told. */
export const chargeEnds = ['tenth', 'C/10', 'twentieth', 'C/20'] as const
export type ChargeEnd = (typeof chargeEnds)[number]

/** Of the chargers whose end nobody told, so many have each or one before it. */
const usualEnds = practice<Readonly<Record<ChargeEnd, number>>>(
  { tenth: 0.6, 'C/10': 0.75, twentieth: 0.95, 'C/20': 1 },
  'most field chargers end at a tenth of the set current, some at a twentieth or by the capacity',
)

/** In A. By the capacity only as far as the set current: a slow charge would end before its taper had begun. */
export function endCurrent_A(end: ChargeEnd, set_A: number, capacity_Ah: number): number {
  const of_A = end.startsWith('C') ? Math.min(set_A, capacity_Ah) : set_A
  return of_A / (end === 'tenth' || end === 'C/10' ? 10 : 20)
}

/** The end of a charger where so large a share of them comes before it. */
export const endAt = (share: number): ChargeEnd => chargeEnds.find(end => share < usualEnds.value[end]) ?? 'C/20'
