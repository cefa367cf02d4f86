// What a command may know besides its inputs: who asks, where, the rules of the house, and how to show numbers.

import type { Danger } from '../charging/situation/dangers.ts'
import type { Doubt } from '../charging/situation/doubts.ts'
import type { Locale } from '../ground/locale.ts'
import type { Show } from '../ground/show.ts'
import type { Vocabulary } from '../language/sentence/vocabulary.ts'
import type { HouseRules, Memory } from '../memory/memory.ts'
import type { Cards } from './cards.ts'
import type { Reply } from './reply.ts'

export interface Person {
  /** Unique across surfaces: "discord:123", "matrix:@ada:example.org", "room:pilot". */
  readonly id: string
  readonly name: string
  /** May change what the whole community shares. */
  readonly moderates: boolean
}

/** A server, a space, or one person's direct messages. */
export interface Community {
  readonly id: string
  readonly name: string
}

/** The channel or room a question was asked in. */
export interface Place {
  readonly id: string
  /** Only the asker and the assistant see it. */
  readonly direct: boolean
}

/** Who asks, and where: what a surface knows of a question besides its words. */
export interface Occasion {
  readonly surface: 'room' | 'discord' | 'matrix'
  readonly asker: Person
  readonly community: Community
  readonly place: Place
}

export interface Context extends Occasion {
  readonly house: HouseRules
  readonly locale: Locale
  readonly show: Show
  /** What the question's words told of dangers, and what of them was left in doubt. */
  readonly dangers: readonly Danger[]
  readonly doubts: readonly Doubt[]
  readonly memory: Memory
  readonly vocabulary: Vocabulary
  readonly cards: Cards
  /** Whether a message can be posted here that answers nobody. */
  readonly speaksFirst: boolean
  /** Asks another question for the same asker, which only the command of that name may answer. */
  ask(command: string, question: string): Promise<Reply>
  /** A whole number from 0 to below 2^31 to draw by: the same one draws the same. */
  newSeed(): number
  /** Absent where no clock is known: then only durations are told. */
  readonly now?: Date
}
