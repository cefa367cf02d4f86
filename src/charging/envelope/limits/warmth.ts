// Limits on how cold or hot a battery may be, by what is done with it.

import { practice } from '../../situation/rule.ts'
import type { Known } from './facts.ts'
import { above, below, cells, charging, type Limits } from './row.ts'

const jeita = 'JEITA/BAJ guide of 2007 and cell datasheets'

/** The first or the last of the temperatures at which the chemistry may be charged. */
const bandEnd =
  (end: 'from_C' | 'to_C', worst: (...values: number[]) => number) =>
  ({ situation: { pack } }: Known) =>
    pack && worst(...pack.chemistry.temperatureBands.value.map(band => band[end]))

/** Most pressing first within a weight. */
export const warmthLimits = {
  tooCold: below('refuse', charging, 'temperature_C', jeita, bandEnd('from_C', Math.min)),
  colderThanClub: below(
    'refuse',
    charging,
    'temperature_C',
    'the rules of this club',
    ({ situation }) => situation.house.coldest_C,
  ),
  tooHot: above('refuse', charging, 'temperature_C', jeita, bandEnd('to_C', Math.max)),
  tooColdToDrain: below('refuse', ['drain'], 'temperature_C', cells, -20),
  tooHotToDrain: above('refuse', ['drain'], 'temperature_C', cells, 60),
  tooColdToStore: below('refuse', ['store'], 'temperature_C', cells, -20),
  tooHotToStore: above('refuse', ['store'], 'temperature_C', cells, 45),
  tooColdToUse: below('refuse', ['look', 'carry'], 'temperature_C', cells, -20),
  tooHotToUse: above('refuse', ['look', 'carry'], 'temperature_C', cells, 60),
  veryCold: below('care', charging, 'temperature_C', jeita, 5),
  cold: below('care', charging, 'temperature_C', jeita, 10),
  warm: above('care', charging, 'temperature_C', jeita, 40),
  warmsUp: above('care', charging, 'warmest_C', jeita, 40),
  warmStore: above('care', ['store'], 'temperature_C', cells, 30),
  cool: below('note', charging, 'temperature_C', practice('cells feel the cold'), 15),
} as const satisfies Limits
