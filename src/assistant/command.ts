// What a chat command is: what it takes, which situations it puts batteries in, what it computes for those that are
// permitted, and, apart from it, its words. It sets no verdict and no caution: the envelope does.

import type { Found, Verdict } from '../charging/envelope/judge.ts'
import type { Permit } from '../charging/situation/permit.ts'
import type { Planned, Told } from '../charging/situation/situation.ts'
import type { Pack } from '../charging/things/pack.ts'
import type { Chart } from '../charts/chart.ts'
import type { Locale, Said } from '../ground/locale.ts'
import type { Problem } from '../ground/problem.ts'
import type { Text } from '../ground/text.ts'
import type { ValueKind } from '../language/kinds/value-kind.ts'
import type { KitEntry } from '../memory/kit.ts'
import type { Context } from './context.ts'
import type { Recalled } from './lookup.ts'
import type { FigureWords, Quantified } from './quantified.ts'
import type { Answer, FollowUp, Reply, ReplyDocument } from './reply.ts'

export interface Option<T = unknown, R extends boolean = boolean> {
  readonly kind: ValueKind<T>
  readonly required: R
}

export const required = <T>(kind: ValueKind<T>): Option<T, true> => ({ kind, required: true })
export const optional = <T>(kind: ValueKind<T>): Option<T, false> => ({ kind, required: false })

// biome-ignore lint/suspicious/noExplicitAny: an option's value type is invariant; the table of options holds them all.
export type Takes = Readonly<Record<string, Option<any>>>
type ValueOf<O> = O extends Option<infer T> ? T : never

/** The values a command gets: required ones always there, the others where they were given. */
export type Asked<T extends Takes> = {
  readonly [K in keyof T as T[K]['required'] extends true ? K : never]: ValueOf<T[K]>
} & {
  readonly [K in keyof T as T[K]['required'] extends true ? never : K]?: ValueOf<T[K]> | undefined
}

/** What is computed says nothing of go or not: that is judged, here and nowhere else. */
export type Unjudged = object & { readonly verdict?: never; readonly cautions?: never }

/** Something that an answer has somebody do, under the permit that it was computed with. */
export interface Deed extends Planned {
  readonly permit: Permit
}

interface Shape<T extends Takes> {
  /** One or two lower-case words; the first word of two names a family ("kit save", "kit list"). */
  readonly name: string
  /** Its family and its name in it, where menus and help show it elsewhere than under its own name. */
  readonly shelf?: string
  /** In the order in which they are read and shown. */
  readonly takes: T
  /** Of each of these details one at least must be told; the first is asked for. */
  readonly anyOf?: readonly (readonly string[])[]
  /** Where no type of cell is told it is about all of them. */
  readonly everyType?: boolean
  /** Whether these options, where another command (by its name) lacks a pack, are all that a question for this one takes. */
  readonly alone?: (options: Readonly<Record<string, string>>, instead: string) => boolean
  /** Whole questions that work as they stand; shown by help and run by a test. */
  readonly examples: readonly string[]
  /**
   * What it would overwrite or remove, as a question: asked first where the command was said in plain words. Undefined
   * where it would neither. Throws a Problem as the command itself would. `isNext` says that it is surely meant, and a change was asked for just before.
   */
  confirm?(asked: Asked<T>, context: Context, isNext: boolean): Promise<Said | undefined>
  /** What is said to whoever does not moderate and asks for it; absent where anybody may. */
  readonly moderators?: Problem
  /** It changes what is kept: asked again it would do so again, so no button only to show more asks it. */
  readonly changes?: true
  /** It speaks on a platform meanwhile, which no transaction waits for: done twice, it does no harm. */
  readonly apart?: true
  /** Its answer is for one asker or about the standard answers themselves, so it cannot be one. */
  readonly notStanding?: true
  /** It asks the asker something: what is typed next may be that detail of that command. */
  readonly answeredBy?: { readonly command: string; readonly option: string }
  /** Its working is what was asked for: a list, a lesson. */
  readonly lists?: true
  /** By the clock, so that it holds for no other time. */
  readonly tellsTime?: true
  /** What is known of the saved things that the question names, for options that it leaves open. */
  recall?(options: Readonly<Record<string, string>>, named: readonly KitEntry[], context: Context): Promise<Recalled>
}

export interface Command<T extends Takes, R extends Unjudged, F extends string> extends Shape<T> {
  /** Each battery that it deals with, as told. */
  situations(asked: Asked<T>, context: Context): readonly Told[] | Promise<readonly Told[]>
  /** A permit for each situation, in their order; absent where one is refused. Of one or more, one is there. */
  compute(permits: readonly (Permit | undefined)[], asked: Asked<T>, context: Context): R | Promise<R>
  deeds(result: R): readonly Deed[]
  figures(result: R): readonly (Quantified<F> | undefined)[]
  documents(result: R): readonly ReplyDocument[]
  /** The reply to another question that this answer rests on: what was judged there holds here too. */
  restsOn(result: R): Reply | undefined
  /** A reply to another question that the answer hands on, with its verdict and its cautions. */
  handsOn?(result: R): Reply
}

interface Computing<T extends Takes, R extends Unjudged, F extends string> extends Shape<T> {
  readonly figures?: (result: R) => readonly (Quantified<F> | undefined)[]
  readonly documents?: (result: R) => readonly ReplyDocument[]
}

const nothing = () => []
const nothingElse = () => undefined

/** About one battery; what is computed is what is to be done with it. */
export function command<const T extends Takes, R extends Unjudged, F extends string = never>({
  situation,
  compute,
  planned,
  figures = nothing,
  documents = nothing,
  ...shape
}: Computing<T, R, F> & {
  situation(asked: Asked<T>, context: Context): Told & { readonly pack: Pack }
  compute(permit: Permit, asked: Asked<T>, context: Context): R
  /** What the result has somebody do, as far as it decides. */
  planned?(result: R): Planned
}): Command<T, R & { readonly permit: Permit }, F> {
  return {
    ...shape,
    situations: (asked, context) => [situation(asked, context)],
    compute: ([permit], asked, context) => ({ ...compute(permit as Permit, asked, context), permit: permit as Permit }),
    deeds: result => [{ ...planned?.(result), permit: result.permit }],
    figures,
    documents,
    restsOn: nothingElse,
  }
}

/** About several batteries, or a battery and what it feeds. */
export function session<const T extends Takes, R extends Unjudged, F extends string = never>({
  figures = nothing,
  documents = nothing,
  ...shape
}: Computing<T, R, F> & Pick<Command<T, R, F>, 'situations' | 'compute' | 'deeds'>): Command<T, R, F> {
  return { ...shape, figures, documents, restsOn: nothingElse }
}

/** About what is kept, or what is known: no battery is charged, drained or connected by its answer. */
export function service<const T extends Takes, R extends Unjudged, F extends string = never>({
  run,
  figures = nothing,
  documents = nothing,
  restsOn = nothingElse,
  ...shape
}: Computing<T, R, F> & {
  run(asked: Asked<T>, context: Context): R | Promise<R>
  restsOn?(result: R): Reply | undefined
  /** A reply to another question that this answer hands on: judged when it was made. */
  handsOn?(result: R): Reply
}): Command<T, R, F> {
  return {
    ...shape,
    lists: true,
    situations: nothing,
    compute: (_, asked, context) => run(asked, context),
    deeds: nothing,
    figures,
    documents,
    restsOn,
  }
}

export interface OptionWords {
  readonly about: Text
  /** How the value stands in the read-as line; the option's name before it when absent. */
  readonly as?: (value: Text) => Text
}

/** What is said of a command before it answers, in one language. */
interface Described<T extends Takes = Takes> {
  /** What it answers, in one line of at most 100 characters. */
  readonly summary: Text
  /** Questions as people put them, that it answers with nothing saved. */
  readonly asks?: readonly Text[]
  /** Sentences as people put them that need something saved, or change it. */
  readonly tells?: readonly Text[]
  readonly takes: { readonly [K in keyof T]: OptionWords }
}

/** A command tied to its words, whatever its types: what help, surfaces and the reading of questions know of it. */
export interface Entry extends Shape<Takes> {
  words(locale: Locale): Described
  answer(asked: Readonly<Record<string, unknown>>, context: Context): Answer | Promise<Answer>
}

/** Something taken for granted; where there is room with who says that it is usual, and what the answer shows anyway. */
export type Assumption = Text | { readonly text: Text; readonly from?: Text; readonly isShown?: true }

export type Words<T extends Takes, R, F extends string> = Saying<T, R, F> &
  ([F] extends [never] ? Partial<FigureWords<R, F>> : FigureWords<R, F>)

interface Saying<T extends Takes, R, F extends string> extends Described<T> {
  /** The answer first, then what must be known at once: a line each. */
  readonly answer: (result: R, asked: Asked<T>, verdict: Verdict) => readonly (Text | undefined)[]
  /** What to look for on the charger before the start, and where it must stop by itself. */
  readonly start?: (result: R, asked: Asked<T>) => Text | undefined
  /** What was changed all the same, where the answer turns out to be refused. */
  readonly changed?: (result: R, asked: Asked<T>) => Text
  /** How the value of a figure reads where its number alone says too little. */
  readonly shown?: (number: Text, figure: Quantified<F>, result: R) => Text
  /** Formulas with the numbers in them, and where each rule comes from. */
  readonly working?: (result: R, asked: Asked<T>) => readonly (Text | undefined)[]
  /** What was taken for granted because the question did not say it. */
  readonly assumed?: (result: R, asked: Asked<T>) => readonly (Assumption | undefined)[]
  /** The reason behind a refusal, where the question has one of its own. */
  readonly whyNot?: (asked: Asked<T>, found: readonly Found[]) => readonly Text[]
  readonly next?: (result: R, asked: Asked<T>) => readonly (FollowUp | undefined)[]
  readonly charts?: (result: R, asked: Asked<T>) => readonly Chart[]
}

export type WordsOf<C> = C extends Command<infer T, infer R, infer F> ? (locale: Locale) => Words<T, R, F> : never
