// What a command may know besides its inputs: who asks, where, the rules of the club, and how to show numbers.

import type { FieldPlan, FieldSession } from '../charging/plan/field.ts'
import type { Danger } from '../charging/situation/dangers.ts'
import type { Doubt } from '../charging/situation/doubts.ts'
import type { KeptDanger } from '../charging/situation/kept.ts'
import type { Learned } from '../charging/things/learned.ts'
import type { Locale } from '../ground/locale.ts'
import type { Show } from '../ground/show.ts'
import type { Vocabulary } from '../language/sentence/vocabulary.ts'
import type { HouseRules, Memory } from '../memory/memory.ts'
import type { Cards } from './cards.ts'
import type { Lookup } from './lookup.ts'
import type { Occasion } from './occasion.ts'
import type { Reply } from './reply.ts'

/** What a command uses of the memory: all of it, or a transaction of it. */
export type Kept = Pick<Context, 'memory' | 'lookup' | 'cards' | 'ask'>

/** What follows a change once that is kept; nothing waits for it. */
export type After = (outside: Pick<Context, 'memory' | 'cards'>) => Promise<unknown>

/** A question that changes something. */
export interface Change {
  /** In canonical notation. */
  readonly question: string
  readonly isApart: boolean
  readonly locale: Locale
  /** With another memory where it is handed one. */
  work(kept: Partial<Kept & Pick<Context, 'afterwards'>>): Promise<Reply>
  /** The reply where it failed; then it changed nothing. */
  failed(error: unknown): Reply
}

export interface Context extends Occasion {
  readonly house: HouseRules
  readonly locale: Locale
  readonly show: Show
  /** What the question's words told of dangers, and what of them was left in doubt. */
  readonly dangers: readonly Danger[]
  readonly doubts: readonly Doubt[]
  /** Dangers that were told before, of whichever pack. */
  readonly kept: readonly KeptDanger[]
  /** What own charges have told of the packs that the question names. */
  readonly learned?: readonly Learned[] | undefined
  /** For what a command itself reads and writes: rejects where it is away. */
  readonly memory: Memory
  readonly lookup: Lookup
  readonly vocabulary: Vocabulary
  readonly cards: Cards
  /** Drops what the asker said last, in every place. */
  forgetConversations(): void
  /** Whether a message can be posted here that answers nobody. */
  readonly speaksFirst: boolean
  /** Plans a session; rejects with a Problem where too much is asked at once. */
  plan(field: FieldSession): Promise<FieldPlan>
  /** Asks another question for the same asker, which only the command of that name may answer. */
  ask(command: string, question: string): Promise<Reply>
  /** A whole number from 0 to below 2^31 to draw by: the same one draws the same. */
  newSeed(): number
  /** Has it done once, however often its question comes. */
  once(change: Change): Promise<Reply>
  afterwards(work: After): Promise<unknown>
  /** Absent where no clock is known: then only durations are told. */
  readonly now?: Date
}
