// A danger that stays through a conversation, with the names in the kit of the pack that it was told of.

import type { KeptDanger } from '../../charging/situation/kept.ts'

export interface StayingDanger extends KeptDanger {
  readonly names: readonly string[]
  /** It may only have sounded so: it ends when it is said to be otherwise. */
  readonly suspected?: boolean
}
