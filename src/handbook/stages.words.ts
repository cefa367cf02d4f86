// What the stages of a charge are called.

import type { StageKind } from '../charging/simulation/charge.ts'
import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'

export const stageNames = ({ say }: Locale): Readonly<Record<StageKind, Text>> => ({
  precharge: say`slow start`,
  'constant current': say`constant current`,
  'constant power': say`constant power`,
  'constant voltage': say`constant voltage`,
  'steps down': say`steps down`,
  balancing: say`balancing`,
})
