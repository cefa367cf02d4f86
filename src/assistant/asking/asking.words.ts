// What is said of details that do not fit, of a question that holds nothing, and of a fault of our own.

import { type Locale, told } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const nothingAsked = ({ say }: Locale): Text => say`(nothing)`
export const faultWords = (reference: string, { say, own }: Locale): Text =>
  say`Something went wrong on my side (reference ${own(reference)}). Nothing was changed on your charger.`
export const afterFault = ({ say }: Locale): Text => say`try again; if it happens again, tell a moderator the reference`

export const takesNo = told(
  ({ say, own }, command: string, option: string) => say`${own(command)} takes no "${own(option)}".`,
)

export const takesOnly = told(({ say, own }, options: readonly string[]) =>
  options.length > 0 ? say`one of: ${own(options.join(', '))}` : say`no further details`,
)

/** `about` says what the option is. */
export const needed = told(({ say, own }, option: string, about: string, readsAsThing: boolean) =>
  readsAsThing ? say`I need the ${own(option)} to answer that.` : say`I need to know ${own(about)}.`,
)
