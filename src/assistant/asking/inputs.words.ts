// What is said of details that a command does not take, that are missing, or that were not used.

import type { Locale, Said } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const takesNo =
  (command: string, option: string): Said =>
  ({ say, own }) =>
    say`${own(command)} takes no "${own(option)}".`

export const takesOnly =
  (options: readonly string[]): Said =>
  ({ say, own }) =>
    options.length > 0 ? say`one of: ${own(options.join(', '))}` : say`no further details`

/** `about` says what the option is. */
export const needed =
  (option: string, about: string, readsAsThing: boolean): Said =>
  ({ say, own }) =>
    readsAsThing ? say`I need the ${own(option)} to answer that.` : say`I need to know ${own(about)}.`

export const notUsedWords = (words: readonly string[], { say, own }: Locale): Text =>
  say`this changes nothing: ${own(words.map(word => `"${word}"`).join(', '))}`
