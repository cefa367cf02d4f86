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
  tooCold: below('refuse', charging, 'temperature_C', 'temperature', bandEnd('from_C', Math.min), jeita),
  tooHot: above('refuse', charging, 'temperature_C', 'temperature', bandEnd('to_C', Math.max), jeita),
  tooColdToDrain: below('refuse', ['drain'], 'temperature_C', 'temperature', -20, cells),
  tooHotToDrain: above('refuse', ['drain'], 'temperature_C', 'temperature', 60, cells),
  tooColdToStore: below('refuse', ['store'], 'temperature_C', 'temperature', -20, cells),
  tooHotToStore: above('refuse', ['store'], 'temperature_C', 'temperature', 45, cells),
  tooColdToUse: below('refuse', ['look', 'carry'], 'temperature_C', 'temperature', -20, cells),
  tooHotToUse: above('refuse', ['look', 'carry'], 'temperature_C', 'temperature', 60, cells),
  veryCold: below('care', charging, 'temperature_C', 'temperature', 5, jeita),
  cold: below('care', charging, 'temperature_C', 'temperature', 10, jeita),
  warm: above('care', charging, 'temperature_C', 'temperature', 40, jeita),
  warmStore: above('care', ['store'], 'temperature_C', 'temperature', 30, cells),
  cool: below('note', charging, 'temperature_C', 'temperature', 15, practice('cells feel the cold')),
} as const satisfies Limits
