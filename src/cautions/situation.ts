// What is known about a question when its cautions are chosen. Everything may be absent.

import type { Refusal } from '../charging/setting/refusal.ts'
import type { Pack } from '../charging/things/pack.ts'
import type { Source } from '../charging/things/source.ts'

export interface Situation {
  readonly pack?: Pack
  readonly source?: Source
  /** Current into the pack, in A. */
  readonly current_A?: number
  /** The highest current that is advised for the pack, in A. */
  readonly highest_A?: number
  /** Current into the charger, in A. */
  readonly input_A?: number
  /** Resting voltage of the lowest cell, in V. */
  readonly restPerCell_V?: number
  readonly temperature_C?: number
  readonly refusal?: Refusal['kind']
}
