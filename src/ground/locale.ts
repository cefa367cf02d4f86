// A language and a number format: the only makers of text that a reply shows.

import { type DecimalMark, type Show, showIn } from './show.ts'
import type { Text } from './text.ts'

export interface Locale {
  /** `say\`Set ${show.current(1)}.\``: the literal pieces are the locale's, and only text stands between them. */
  say(pieces: TemplateStringsArray, ...values: readonly Text[]): Text
  /** Numbers with their units. */
  readonly show: Show
  /** Words that stay as they are in every language: the asker's own, names, notation, citations. */
  own(words: string): Text
}

/** Something to be said in whatever locale the asker has. */
export type Said = (locale: Locale) => Text

const englishWith = (mark: DecimalMark): Locale => ({
  say: (pieces, ...values) =>
    values.reduce<string>((said, value, at) => `${said}${value}${pieces[at + 1]}`, pieces[0] ?? '') as Text,
  show: showIn(mark),
  own: words => words as Text,
})

const both = { '.': englishWith('.'), ',': englishWith(',') }
/** The same of what is handed in. */
export const told =
  <A extends readonly unknown[]>(words: (locale: Locale, ...about: A) => Text) =>
  (...about: A): Said =>
  locale =>
    words(locale, ...about)

export const english = (mark: DecimalMark): Locale => both[mark]
