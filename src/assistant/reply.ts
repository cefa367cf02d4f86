// What every answer, refusal and error looks like before a surface renders it.

import type { RuleKey, Verdict } from '../charging/envelope/judge.ts'
import type { Danger } from '../charging/situation/dangers.ts'
import type { KeptDanger } from '../charging/situation/kept.ts'
import type { Chart } from '../charts/chart.ts'
import type { Locale } from '../ground/locale.ts'
import type { ProblemDetails } from '../ground/problem.ts'
import { joined, type Text } from '../ground/text.ts'
import type { Understanding } from '../language/reading/meant.ts'
import { deferenceIn } from './reply.words.ts'

export type { Verdict }

export type Unit =
  | 'A'
  | 'V'
  | 'Ah'
  | 'Wh'
  | 'W'
  | 's'
  | 'Ω'
  | '°C'
  | 'C'
  | '%'
  | 'm'
  | 'mm'
  | 'mm²'
  | 'g'
  | 'Wh/kg'
  | 'count'

/** A safety sentence that a reply carries because of what was asked. */
export interface Caution {
  readonly key: string
  readonly text: Text
  /** The same for a phone, where it can be said shorter. */
  readonly short?: Text
  /** It is cut by no cap, view or surface. */
  readonly must?: boolean
  /** Said of every charge: in a short answer the last of them stands for all. */
  readonly usual?: boolean
  /** Why the answer is no plain go, where nothing before it says so. */
  readonly reason?: boolean
}

/** A named quantity of a reply, in base units, with the text that a person reads. */
export interface Figure {
  /** Stable camelCase name, documented with the command. */
  readonly key: string
  readonly label: Text
  readonly value: number
  readonly unit: Unit
  readonly low?: number
  readonly high?: number
  readonly text: Text
}

/** A "what if": a short label and the whole question that it asks. */
export interface FollowUp {
  readonly label: Text
  readonly question: string
}

/** A file that goes with a reply, for what is too long for a message. */
export interface ReplyDocument {
  readonly name: string
  readonly mediaType: 'application/json' | 'text/csv'
  readonly text: string
}

export type NonEmpty<T> = readonly [T, ...T[]]

/** What a command makes of its inputs. It cannot lack cautions; dispatch adds the rest of the reply. */
export interface Answer {
  /** Where charging is at stake. */
  readonly verdict?: Verdict
  /** The answer in plain words, first line of every rendering. */
  readonly headline: Text
  /** The same line by line, where it has more than one. */
  readonly lines?: NonEmpty<Text>
  /** How many of them stand before the answer: what must be known first, cut by nothing. */
  readonly leads?: number
  /** What the charger must show before the start, and where it must stop by itself. */
  readonly start?: Text
  readonly figures?: readonly Figure[]
  /** Formulas with the numbers in them, and where each rule comes from. */
  readonly working?: readonly Text[]
  /** The working is what was asked for. */
  readonly lists?: boolean
  /** What was asked for of it besides: it follows the answer, as much of it as a phone has room for. */
  readonly opens?: readonly Text[]
  readonly cautions: NonEmpty<Caution>
  readonly followUps?: readonly FollowUp[]
  readonly charts?: readonly Chart[]
  readonly documents?: readonly ReplyDocument[]
  /** Which rules speak against it, or must be known first. */
  readonly reasons?: readonly RuleKey[]
  /** What the command took for granted because the question did not say it. */
  readonly assumed?: readonly Text[]
  /** Of that, what the read-as line does not show. */
  readonly alsoAssumed?: readonly Text[]
  /** What was told before of the packs that it deals with. */
  readonly stood?: readonly KeptDanger[]
  /** What was measured of them that stays with them. */
  readonly leaves?: readonly Pick<KeptDanger, 'danger' | 'of'>[]
}

declare const complete: unique symbol

/** Only `completeReply` makes one, so none can lack its read-as line, cautions or deference. */
export interface Reply
  extends Required<Omit<Answer, 'verdict' | 'start' | 'lists' | 'opens' | 'reasons' | 'stood' | 'leaves'>>,
    Pick<Answer, 'verdict' | 'start' | 'lists' | 'opens' | 'reasons'> {
  readonly [complete]: true
  /** In which it is said; what a surface adds is said in it too. */
  readonly locale: Locale
  readonly command: string
  /** The question as understood: the text after "Read as: ". */
  readonly readAs: Text
  readonly deference: Text
  /** Where the community has this answer standing already. */
  readonly seeAlso?: Text
  /** Of what stands there for long: who changed it, and when. */
  readonly changed?: Text | undefined
  readonly problem?: ProblemDetails
  /** Where the program itself failed: the reference under which the log has the fault. */
  readonly fault?: string
  /** The question was not looked at, for its asker asks faster than people do; `again` where they were told so just now. */
  readonly tooFast?: 'first' | 'again'
  /** It answers nothing, so nothing is said beside its headline. */
  readonly alone?: true
  /** Dangers that its words have just told. */
  readonly tells?: readonly Danger[]
  /** How a plain sentence was understood; absent where the question was written in notation. */
  readonly understood?: Understanding
  /** The question in full notation; asked again it gives this reply again. Absent where there was none to read. */
  readonly question?: string
}

/** Said whole, and line by line; there is one at least. */
export const inLines = (lines: readonly Text[]): Pick<Reply, 'headline' | 'lines'> => ({
  headline: joined(lines),
  lines: lines as unknown as Reply['lines'],
})

type Frame = Pick<Reply, 'command' | 'readAs' | 'question' | 'problem' | 'fault'>

export function completeReply(frame: Frame, answer: Answer, locale: Locale): Reply {
  const { stood: _, leaves: __, ...said } = answer
  const { figures = [], working = [], followUps = [], charts = [], documents = [], assumed = [] } = said
  const { lines = [said.headline], leads = 0, alsoAssumed = assumed } = said
  const lists = { lines, leads, figures, working, followUps, charts, documents, assumed, alsoAssumed }
  return { ...said, ...lists, ...frame, deference: deferenceIn(locale), locale } as unknown as Reply
}
