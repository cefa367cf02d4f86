// Limits on what can be measured or computed. A row each: what it weighs, which number, on which side of what, and who says so.
// A limit sees no danger and no other row's number, so no hazard can soften another.

import { ageLimits } from './age.ts'
import { boardsLimits } from './boards.ts'
import { cellsLimits } from './cells.ts'
import { logLimits } from './log.ts'
import { meterLimits } from './meter.ts'
import { settingLimits } from './setting.ts'
import { sourcesLimits } from './sources.ts'
import { warmthLimits } from './warmth.ts'

/** Most pressing first within a weight. */
export const limits = {
  ...cellsLimits,
  ...warmthLimits,
  ...boardsLimits,
  ...ageLimits,
  ...logLimits,
  ...meterLimits,
  ...settingLimits,
  ...sourcesLimits,
} as const

export type LimitKey = keyof typeof limits
