// What is wrong with a question, said so that the asker can mend it.

import { english, type Locale, type Said } from './locale.ts'
import type { Text } from './text.ts'

export interface ProblemDetails {
  /** What is wrong, one short sentence. */
  readonly what: Text
  /** The word of the question that it is about, as the asker wrote it; empty where it is about a value that no word was typed for. */
  readonly token?: string
  /** What was expected instead, with its range. */
  readonly expected: Text
  /** Something that would do. */
  readonly example: string
  /** Nothing is asked: no other words would do. */
  readonly final?: true
  /** The detail of the command that would mend it, where what is typed next may be that. */
  readonly awaits?: string
  /** Where the question itself tells of danger. */
  readonly verdict?: 'do not charge'
  /** What there is to choose from, each with the whole question that it stands for. */
  readonly choices?: readonly Choice[]
}

/** What was wanted instead: `expected` gives the range, `example` something that would do. */
export interface Wanted {
  readonly expected: Said
  readonly example: string
}

export interface Choice {
  readonly label: string
  readonly question: string
  /** Where it is the asker's own question: what stands in it instead of the token. */
  readonly instead?: string
}

/** The same before a locale has made words of it; an example is notation, which no locale changes. */
export interface ProblemToSay extends Omit<ProblemDetails, 'what' | 'expected'> {
  readonly what: Text | Said
  readonly expected: Text | Said
}

const saidIn = (locale: Locale, what: Text | Said): Text => (typeof what === 'function' ? what(locale) : what)

/** The one error that commands and readers throw on purpose; dispatch turns it into a reply. */
export class Problem extends Error {
  readonly #told: ProblemToSay

  constructor(told: ProblemToSay) {
    super(saidIn(english('.'), told.what))
    this.name = 'Problem'
    this.#told = told
  }

  /** The same with something to choose from. */
  offering(choices: readonly Choice[]): Problem {
    return this.with({ choices })
  }

  with(changed: Partial<Pick<ProblemToSay, 'token' | 'choices'>>): Problem {
    return new Problem({ ...this.#told, ...changed })
  }

  saidIn(locale: Locale): ProblemDetails {
    const { what, expected, ...rest } = this.#told
    return { ...rest, what: saidIn(locale, what), expected: saidIn(locale, expected) }
  }

  /** In English. */
  get details(): ProblemDetails {
    return this.saidIn(english('.'))
  }
}

/** What `read` gives; undefined where it throws a Problem. */
export function attempt<T>(read: () => T): T | undefined {
  try {
    return read()
  } catch (error) {
    if (error instanceof Problem) return undefined
    throw error
  }
}
