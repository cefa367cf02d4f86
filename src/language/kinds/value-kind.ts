// A kind of value that an option takes: how it is read, written out and completed.

import type { Chemistry } from '../../charging/things/chemistry.ts'
import type { Pack } from '../../charging/things/pack.ts'
import type { Read } from '../scan/read.ts'
import type { CellType } from '../things/cell-type.ts'

/** What was read before this option, for values whose sense depends on it (pack volts need the cell count). */
export interface Earlier {
  readonly pack?: Pack
  readonly chemistry?: Chemistry | CellType
  readonly packs?: readonly { readonly count: number; readonly item: { readonly pack: Pack } }[]
  /** Of so many packs the first share a board. */
  readonly places?: number
}

export interface ValueKind<T> {
  readonly name: string
  readonly example: string
  /** Throws a Problem that points at the word it cannot read. */
  read(text: string, earlier: Earlier): Read<T>
  /** Canonical text; reading it gives the same value. */
  write(value: T): string
  /** Up to 25 values that start as `prefix` does. */
  complete(prefix: string): readonly string[]
}

/** The suggestions that start as `prefix` does, whatever the case. */
export const startingWith =
  (suggestions: readonly string[]) =>
  (prefix: string): readonly string[] =>
    suggestions.filter(text => text.toLowerCase().startsWith(prefix.trim().toLowerCase()))

/** A kind whose reader takes nothing for granted; its first suggestion is its example. */
export const plainKind = <T>(
  name: string,
  read: (text: string) => T,
  write: (value: T) => string,
  suggestions: readonly [string, ...string[]],
): ValueKind<T> => ({
  name,
  example: suggestions[0],
  read: text => ({ value: read(text), assumed: [] }),
  write,
  complete: startingWith(suggestions),
})

/** Words kept as they are read; nothing is offered while they are typed. */
export const wordsKind = ({ name, example, read }: WordsKind): ValueKind<string> => ({
  ...plainKind(name, read, words => words, [example]),
  complete: () => [],
})

interface WordsKind {
  readonly name: string
  readonly example: string
  read(text: string): string
}
