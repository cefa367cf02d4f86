// What the assistant remembers for its communities, behind one interface whatever database keeps it.

import type { ChemistryName } from '../charging/things/chemistry.ts'
import type { HouseLimits } from '../charging/things/house-limits.ts'
import type { DecimalMark } from '../ground/show.ts'
import type { LogMemory, NotedCharge } from './charge-log.ts'
import type { Owner } from './owner.ts'
import type { LessonMemory, PendingQuestion } from './progress.ts'
import type { Reminder, ReminderMemory } from './reminder.ts'
import type { AnswerMemory } from './standard-answer.ts'

/** Questions kept so that a short id on a button can stand for them, also after a restart. */
export interface QuestionMemory {
  /** Keeps the question and returns its id: 16 characters, the same for the same question. */
  keep(question: string): Promise<string>
  find(id: string): Promise<string | undefined>
  /** Drops what was last kept before that day. */
  forgetBefore(time: Date): Promise<void>
}

/** One question that was answered: which message asked, which answered. */
export interface AnsweredQuestion {
  /** Unique across surfaces, as are the message ids: "discord:…", "matrix:…". */
  readonly place: string
  readonly askedBy: string
  readonly questionMessage: string
  readonly answerMessage: string
  /** In canonical notation. */
  readonly question: string
  readonly answeredAt: Date
}

/** Which messages were answered: so that none is answered twice, an edit finds its answer, a reply its question. */
export interface AnsweredMemory {
  record(answered: AnsweredQuestion): Promise<void>
  byQuestion(questionMessage: string): Promise<AnsweredQuestion | undefined>
  byAnswer(answerMessage: string): Promise<AnsweredQuestion | undefined>
  /** Drops what is older. */
  forgetBefore(time: Date): Promise<void>
}

export type KitKind = 'pack' | 'charger' | 'source'

/** A pack, a charger or a source saved by name. */
export interface KitEntry {
  readonly owner: Owner
  /** Lower case; unique among its owner's. */
  readonly name: string
  readonly kind: KitKind
  /** In canonical notation. */
  readonly notation: string
}

export interface KitMemory {
  /** Saves the entry in place of any of the same owner and name, unless that owner already has `most` others. */
  save(entry: KitEntry, most: number): Promise<'saved' | 'full'>
  count(owner: Owner): Promise<number>
  /** Those of the owners' entries that bear one of the names; an earlier owner's entry hides a later one's. */
  find(owners: readonly Owner[], names: readonly string[]): Promise<readonly KitEntry[]>
  /** As `find`, of the kinds, by name, `most` at most. */
  startingWith(
    owners: readonly Owner[],
    prefix: string,
    kinds: readonly KitKind[],
    most: number,
  ): Promise<readonly KitEntry[]>
  /** The charges noted of a pack keep to it. */
  rename(owner: Owner, from: string, to: string): Promise<'renamed' | 'missing' | 'taken'>
  /** The charges noted of a pack go with it. False where there was none. */
  remove(owner: Owner, name: string): Promise<boolean>
}

/** What a community's moderators have set: the limits that the core applies, and how the assistant behaves there. */
export interface HouseRules extends HouseLimits {
  readonly decimalMark?: DecimalMark
  readonly language?: 'English'
  readonly privateAnswers?: 'everyone' | 'moderators'
}

/** A change of one rule; `null` lifts it. Rules for one chemistry name it. */
export type HouseChange =
  | {
      readonly rule: 'maxRate_C' | 'storagePerCell_V' | 'sourceFloorPerCell_V'
      readonly chemistry: ChemistryName
      readonly value: number | null
    }
  | { readonly rule: 'gentleLiIon'; readonly value: boolean | null }
  | { readonly rule: 'decimalMark'; readonly value: DecimalMark | null }
  | { readonly rule: 'language'; readonly value: 'English' | null }
  | { readonly rule: 'privateAnswers'; readonly value: 'everyone' | 'moderators' | null }

export interface HouseMemory {
  rules(community: string): Promise<HouseRules>
  /** All changes or none. Rules not named stay: of two moderators at once, the last holds rule by rule. */
  change(community: string, changes: readonly HouseChange[]): Promise<void>
}

/** Everything that is kept about one person, for handing it out and for deleting it. */
export interface MemberMemory {
  export(person: string): Promise<MemberData>
  /** All of it or, where that fails, nothing. */
  forget(person: string): Promise<void>
}

export interface MemberData {
  readonly kit: readonly KitEntry[]
  readonly answered: readonly AnsweredQuestion[]
  readonly reminders: readonly Reminder[]
  /** Charges of their own packs. */
  readonly log: readonly NotedCharge[]
  /** Questions of the lessons that they have answered right. */
  readonly learned: readonly string[]
  /** One at most. */
  readonly pending: readonly PendingQuestion[]
}

export interface Memory {
  readonly questions: QuestionMemory
  readonly answered: AnsweredMemory
  readonly kit: KitMemory
  readonly house: HouseMemory
  readonly answers: AnswerMemory
  readonly reminders: ReminderMemory
  readonly log: LogMemory
  readonly lessons: LessonMemory
  readonly members: MemberMemory
  close(): Promise<void>
}
