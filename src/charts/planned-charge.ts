// One charge of a field session, as its chart shows it.

import type { Text } from '../ground/text.ts'

export interface PlannedCharge {
  readonly pack: Text
  readonly port: Text
  /** What to set: "1 A to 4.35 V". */
  readonly setting: Text
  readonly start_s: number
  readonly end_s: number
}
