// How the working of an answer is shown and hidden, said below it.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

/** What a person reacts with, and what they may write instead. */
interface Wish {
  readonly reaction: string
  readonly words: string
}

export const showHint = ({ reaction, words }: Wish, { say, own }: Locale): Text =>
  say`To show the working, react with ${own(reaction)} or reply "${own(words)}".`
export const hideHint = ({ reaction, words }: Wish, { say, own }: Locale): Text =>
  say`To hide the working, react with ${own(reaction)} or reply "${own(words)}".`
