// What the words of a rule are: lines, the first of which can stand alone at the top of an answer.

import type { Found } from '../../charging/envelope/judge.ts'
import type { Weight } from '../../charging/situation/rule.ts'
import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

/** A refusal also says what to do instead. */
export type Lines<W extends Weight = Weight> = W extends 'refuse'
  ? readonly [Text, Text, ...Text[]]
  : readonly [Text, ...Text[]]

/** Words for each rule of a table: one without does not compile. */
type RuleWords<T extends Readonly<Record<string, { readonly weight: Weight }>>> = {
  readonly [K in keyof T]: (met: Met) => Lines<T[K]['weight']>
}

/** A rule that fits, its numbers shown. */
export interface Met {
  /** The limit. */
  readonly than: Text
  /** The number that broke it. */
  readonly met: Text
  readonly found: Found
}

export type WordsOf<T extends Readonly<Record<string, { readonly weight: Weight }>>> = (locale: Locale) => RuleWords<T>
