// The live cards of standard answers, as commands deal with them: what they say, and where they stand.

import type { Said } from '../ground/locale.ts'
import type { HouseRules } from '../memory/memory.ts'
import type { Saying, StandardAnswer } from '../memory/standard-answer.ts'
import type { Reply } from './reply.ts'

/** What became of a card: where it stands, and what hindered the rest. */
export interface Standing {
  readonly posted: boolean
  readonly pinned: boolean
  readonly link?: string | undefined
  /** A whole sentence. */
  readonly missing?: Said | undefined
}

export interface Cards {
  /** What a card of the community says now, or would say under other rules. */
  render(community: string, saying: Saying & Partial<Pick<StandardAnswer, 'id'>>, rules?: HouseRules): Promise<Reply>
  /** Posts the card there and pins it; then the one that stood elsewhere is taken away. */
  post(id: string, place: string): Promise<Standing>
  /** Brings the card up to date, posts it again where it was deleted, pins it where that failed before. */
  restore(id: string): Promise<Standing>
  /** For an answer that is no more. */
  takeAway(answer: StandardAnswer): Promise<void>
  /**
   * Brings every card of the community up to date. One that was deleted or unpinned by people stays so. Gives when the
   * first of those is due that were edited just now.
   */
  refresh(community: string): Promise<Date | undefined>
}
