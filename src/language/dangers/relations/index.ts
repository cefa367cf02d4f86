// All relations between told values.

import type { Relation } from './relation.ts'
import { wrongCharger, wrongCount, wrongMode } from './setting.ts'
import { overfull, tooFast, tooHigh } from './speed.ts'
import { boardMixed, tooLow } from './volts.ts'

export const relations: readonly Relation[] = [
  tooLow,
  overfull,
  tooHigh,
  wrongCharger,
  wrongMode,
  wrongCount,
  tooFast,
  boardMixed,
]
