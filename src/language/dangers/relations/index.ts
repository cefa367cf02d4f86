// All relations between told values.

import { nobodyAwake } from './attended.ts'
import { cutoffTooHigh } from './cutoff.ts'
import { deadCell } from './dead-cell.ts'
import { typeInDoubt } from './label.ts'
import type { Relation } from './relation.ts'
import { childAlone, childrensRoom, leavesRoom } from './rooms.ts'
import { modeByMistake, wrongCharger, wrongCount, wrongMode } from './setting.ts'
import { overfull, tooFast, tooHigh, tooSoon } from './speed.ts'
import { chargedAboard, chargedInWet, wetDevice } from './spoken-of.ts'
import { boardMixed, tooLow } from './volts.ts'
import { withoutCharger } from './without-charger.ts'

export const relations: readonly Relation[] = [
  tooLow,
  deadCell,
  overfull,
  tooHigh,
  wrongCharger,
  wrongMode,
  modeByMistake,
  cutoffTooHigh,
  wrongCount,
  tooFast,
  tooSoon,
  boardMixed,
  childrensRoom,
  childAlone,
  leavesRoom,
  wetDevice,
  chargedInWet,
  nobodyAwake,
  chargedAboard,
  withoutCharger,
  typeInDoubt,
]
