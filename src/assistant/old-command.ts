// What a chat command is: a name, the options it takes, and a function from their values to an answer.

import type { Locale } from '../ground/locale.ts'
import type { Text } from '../ground/text.ts'
import type { ValueKind } from '../language/kinds/value-kind.ts'
import type { KitEntry } from '../memory/memory.ts'
import type { Context } from './context.ts'
import type { Answer } from './reply.ts'

export interface Option<T = unknown, R extends boolean = boolean> {
  readonly kind: ValueKind<T>
  readonly required: R
  readonly description: string
  /** How the value stands in the read-as line; the option's name before it when absent. */
  readonly phrase?: (text: string) => string
}

type OptionRules = Pick<Option, 'description' | 'phrase'>

export const required = <T>(kind: ValueKind<T>, rules: OptionRules): Option<T, true> => ({
  kind,
  required: true,
  ...rules,
})

export const optional = <T>(kind: ValueKind<T>, rules: OptionRules): Option<T, false> => ({
  kind,
  required: false,
  ...rules,
})

// biome-ignore lint/suspicious/noExplicitAny: an option's value type is invariant; the table of options holds them all.
export type Options = Readonly<Record<string, Option<any>>>

type ValueOf<O> = O extends Option<infer T> ? T : never

/** The values a command gets: required ones always there, optional ones where they were given. */
export type Inputs<O extends Options> = {
  readonly [K in keyof O as O[K]['required'] extends true ? K : never]: ValueOf<O[K]>
} & {
  readonly [K in keyof O as O[K]['required'] extends true ? never : K]?: ValueOf<O[K]>
}

/** Options as they would be typed, and where they come from, to be said out loud. */
export interface Recalled {
  readonly options: Readonly<Record<string, string>>
  readonly assumed: readonly string[]
}

/** What a command and its options are, in one language. */
export interface Described {
  readonly summary: Text
  readonly takes: Readonly<Record<string, { readonly about: Text }>>
}

export interface CommandDefinition<O extends Options> {
  /** One or two lower-case words; the first word of two names a family ("kit save", "kit list"). */
  readonly name: string
  /** What it answers, in one line of at most 100 characters. */
  readonly summary: string
  /** In the order in which they are read and shown. */
  readonly options: O
  /** Whole questions that work as they stand; shown by help and run by a test. */
  readonly examples: readonly string[]
  /** Phrases that mean this command in a question asked in plain words; the longest match wins. */
  readonly plainWords?: readonly string[]
  /** Kinds of value that, held together by a question without any such phrase, mean this command; most kinds win. */
  readonly meantBy?: readonly (readonly string[])[]
  /** It changes what is kept: asked again it would do so again, so no button only to show more asks it. */
  readonly changes?: true
  /** Its answer is for one asker or about the standard answers themselves, so it cannot be one. */
  readonly notStanding?: true
  /** What is known of the saved things that the question names, for options that it leaves open. */
  recall?(
    options: Readonly<Record<string, string>>,
    named: readonly KitEntry[],
    context: Context,
  ): Promise<Recalled>
  /** Where its words are apart from it. */
  wordsIn?(locale: Locale): Described
  answer(inputs: Inputs<O>, context: Context): Answer | Promise<Answer>
}

export type Command = CommandDefinition<Options>

/** Ties the types of a command's options to its answer. */
export function defineCommand<const O extends Options>(definition: CommandDefinition<O>): Command {
  return definition as unknown as Command
}
