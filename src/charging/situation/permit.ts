// That a battery in its situation may be dealt with: only the envelope gives one, and computing needs it.

import type { Pack } from '../things/pack.ts'
import type { Situation } from './situation.ts'

declare const sealed: unique symbol

/** What was judged is what is computed: whoever computes reads the situation in here. */
export interface Permit {
  readonly [sealed]: true
  readonly situation: Situation & { readonly pack: Pack }
}
