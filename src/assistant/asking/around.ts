// What stands around a question while it is answered, and what is known of it beyond its details.

import type { Danger } from '../../charging/situation/dangers.ts'
import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Said } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { DangersIn } from '../../language/dangers/index.ts'
import { type Frame, noTalk, type Talk } from '../../language/frames/frame.ts'
import type { StayingDanger } from '../../language/frames/staying.ts'
import type { Understanding } from '../../language/reading/meant.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { Language } from '../../language/tongues/tongue.ts'
import type { KitEntry } from '../../memory/kit.ts'
import type { Context } from '../context.ts'
import type { FaultListener } from '../fault-listener.ts'
import type { Registry } from '../registry.ts'

/** What was said before, and where what is said now is kept. */
export interface Conversation {
  readonly talk: Talk
  keep(frame: Frame): void
  /** What the handbook was asked. */
  keepAbout(about: string | undefined): void
  keepTold(told: readonly StayingDanger[]): void
}

/** For whoever asks by themselves: nothing was said before. */
export const noConversation: Conversation = { talk: noTalk, keep: () => {}, keepAbout: () => {}, keepTold: () => {} }

export interface Around {
  readonly registry: Registry
  readonly context: Context
  readonly typed: Text
  /** In which it is asked. */
  readonly language: Language
  /** The dangers that its words tell. */
  readonly heard: DangersIn
  readonly conversation: Conversation
  readonly onFault: FaultListener
}

/** A question with all that is known of it beyond its details. */
export interface Known {
  readonly question: Question
  readonly used: readonly KitEntry[]
  readonly assumed: readonly Said[]
  readonly dangers: readonly Danger[]
  readonly doubts: readonly Doubt[]
  /** What was told before and now, of whichever pack. */
  readonly kept: readonly StayingDanger[]
  readonly understanding: Understanding | undefined
}
