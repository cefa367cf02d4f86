// What the assistant remembers for its communities, behind one interface whatever database keeps it.

import type { ChargeEnd } from '../charging/things/charge-end.ts'
import type { ChemistryName } from '../charging/things/chemistry.ts'
import type { HouseLimits } from '../charging/things/house-limits.ts'
import type { DecimalMark } from '../ground/show.ts'
import type { LogMemory, NotedCharge } from './charge-log.ts'
import type { DueMemory } from './due.ts'
import type { KitEntry, KitMemory } from './kit.ts'
import type { NoticedMemory } from './noticed.ts'
import type { Owner } from './owner.ts'
import type { LessonMemory, PendingQuestion } from './progress.ts'
import type { Reminder, ReminderMemory } from './reminder.ts'
import type { AnswerMemory, StandardAnswer } from './standard-answer.ts'

/** Questions kept so that a short id on a button can stand for them, also after a restart. */
export interface QuestionMemory {
  /** Keeps the question and returns its id: 16 characters, the same for the same question. */
  keep(question: string): Promise<string>
  /** All of them or none; their ids in the same order. */
  keepAll(questions: readonly string[]): Promise<readonly string[]>
  /** Under which it is kept, or would be. */
  idOf(question: string): string
  find(id: string): Promise<string | undefined>
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
  /** Who has tapped on the answer: each tap is recorded with the answer's id, a # and its own. */
  readersOf(answerMessage: string): Promise<readonly string[]>
}

/** What a community's moderators have set: the limits that the core applies, and how the assistant behaves there. */
export interface HouseRules extends HouseLimits {
  readonly decimalMark?: DecimalMark
  readonly language?: 'English'
  readonly privateAnswers?: 'everyone' | 'moderators'
  /** In the club's own words: whom to call, where it flies, where batteries are handed in, when it is to be quiet. */
  readonly emergencyNumber?: string
  readonly fieldAddress?: string
  readonly collectionPoint?: string
  readonly quietHours?: string
  /** The time zone whose clocks hang there, by the name that Intl takes. */
  readonly clock?: string
  /** The place in which moderators are told of emergencies. */
  readonly moderatorsRoom?: string
  /** A digest comes there; none where absent. */
  readonly digest?: 'weekly'
}

export type ClubFact =
  | 'emergencyNumber'
  | 'fieldAddress'
  | 'collectionPoint'
  | 'quietHours'
  | 'clock'
  | 'moderatorsRoom'
  | 'digest'

/** A change of one rule; `null` lifts it. Rules for one chemistry name it. */
export type HouseChange =
  | {
      readonly rule: 'maxRate_C' | 'fullPerCell_V' | 'storagePerCell_V' | 'sourceFloorPerCell_V'
      readonly chemistry: ChemistryName
      readonly value: number | null
    }
  | { readonly rule: 'coldest_C'; readonly value: number | null }
  | { readonly rule: 'gentleLiIon'; readonly value: boolean | null }
  | { readonly rule: 'chargeEnd'; readonly value: ChargeEnd | number | null }
  | { readonly rule: 'decimalMark'; readonly value: DecimalMark | null }
  | { readonly rule: 'language'; readonly value: 'English' | null }
  | { readonly rule: 'privateAnswers'; readonly value: 'everyone' | 'moderators' | null }
  | { readonly rule: ClubFact; readonly value: string | null }

export interface HouseMemory {
  rules(community: string): Promise<HouseRules>
  /** Of every community that has any. */
  everyones(): Promise<Map<string, HouseRules>>
  /** All changes or none. Rules not named stay: of two moderators at once, the last holds rule by rule. */
  change(community: string, changes: readonly HouseChange[]): Promise<void>
}

export type AnswerKept = Pick<StandardAnswer, 'id' | 'title' | 'kind' | 'content' | 'canonical' | 'place'>

/** What it was and what it became; absent where there was nothing, or is nothing any longer. */
export type Change =
  | { readonly of: 'rules'; readonly before: readonly HouseChange[]; readonly after: readonly HouseChange[] }
  | { readonly of: 'answer'; readonly before?: AnswerKept | undefined; readonly after?: AnswerKept | undefined }
  | {
      readonly of: 'kit'
      readonly before?: KitEntry | undefined
      readonly after?: KitEntry | undefined
      /** Charges noted of a pack that went with it. */
      readonly log?: readonly NotedCharge[]
    }

/** Who changed something that a community shares, or lately their own kit. */
export interface Author {
  readonly community: string
  /** The person's id, and how people know them; both empty where they asked to be forgotten. */
  readonly person: string
  readonly name: string
  readonly at: Date
}

export interface NotedChange extends Author {
  readonly id: string
  /** Whose it is that was changed. */
  readonly scope: Owner['scope']
  readonly change: Change
  readonly undone: boolean
  /** The change that this one took back; empty where it took back none. */
  readonly undoes: string
}

export interface Worked<T> {
  readonly result: T
  /** Absent where nothing was changed after all. */
  readonly change?: Change | undefined
}

export interface HistoryMemory {
  /**
   * Has `work` change something and notes it, both or neither. `work` uses only the memory that it is handed.
   * `undoes` is the change that is taken back by it.
   */
  noting<T>(by: Author, work: (memory: Memory) => Promise<Worked<T>>, undoes?: NotedChange): Promise<T>
  /** Of what the community shares, the latest first. */
  latest(community: string, most: number): Promise<readonly NotedChange[]>
  /** The last one of a standard answer. */
  ofAnswer(community: string, answer: string): Promise<NotedChange | undefined>
  /** The last few of this person there, and of their own things anywhere, that were not taken back, and take back none; the latest first. */
  changesOf(person: string, community: string): Promise<readonly NotedChange[]>
}

/** Everything that is kept about one person, for handing it out and for deleting it. */
export interface MemberMemory {
  export(person: string): Promise<MemberData>
  /** All of it or, where that fails, nothing. */
  forget(person: string): Promise<void>
  /** After a transaction in which somebody was forgotten: takes what is left of it out of the files. */
  leaveNoTrace(): Promise<void>
}

export interface MemberData {
  readonly kit: readonly KitEntry[]
  readonly answered: readonly AnsweredQuestion[]
  readonly reminders: readonly Reminder[]
  /** Questions and answers on their way. */
  readonly waiting: readonly unknown[]
  /** Charges of their own packs. */
  readonly log: readonly NotedCharge[]
  /** Rules, where there are any, and standard answers of their direct messages. */
  readonly alone: readonly (HouseRules | StandardAnswer)[]
  /** Questions of the lessons that they have answered right. */
  readonly learned: readonly string[]
  /** One at most. */
  readonly pending: readonly PendingQuestion[]
  /** What they changed of what a community shares, and lately of their own. */
  readonly changed: readonly NotedChange[]
}

export interface Memory {
  readonly questions: QuestionMemory
  readonly answered: AnsweredMemory
  readonly kit: KitMemory
  readonly house: HouseMemory
  readonly answers: AnswerMemory
  readonly due: DueMemory
  readonly reminders: ReminderMemory
  readonly log: LogMemory
  readonly history: HistoryMemory
  readonly lessons: LessonMemory
  readonly noticed: NoticedMemory
  readonly members: MemberMemory
  /** Drops what nobody needs any longer. */
  forgetOld(now: Date): Promise<void>
  /** All of the work or none of it; it uses only the memory that it is handed. */
  together<T>(work: (memory: Memory) => Promise<T>): Promise<T>
  close(): Promise<void>
}
