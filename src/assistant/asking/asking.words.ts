// What is said of details that are missing, of too much at once, of a question that holds nothing, and of a fault of our own.

import { type Locale, told } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Text } from '../../ground/text.ts'

export const nothingAsked = ({ say }: Locale): Text => say`(nothing)`
export const faultWords = (reference: string, { say, own }: Locale): Text =>
  say`Something went wrong on my side (reference ${own(reference)}). Nothing was changed on your charger.`
export const afterFault = ({ say }: Locale): Text => say`try again; if it happens again, tell a moderator the reference`

export const askedAgo = (ago_s: number, { say, show }: Locale): Text => say`You asked this ${show.roughly(ago_s)} ago.`

/** How long it takes beside what was asked before, which was read as `before`. */
export const besideBefore = (now_s: number, before_s: number, before: Text, { say, show }: Locale): Text => {
  const [now, then] = [show.roughly(now_s), show.roughly(before_s)]
  if (Math.abs(now_s / before_s - 1) < alike) return say`The same time as for ${before}.`
  return now_s > before_s
    ? say`Longer than for ${before}: ${now}, not ${then}.`
    : say`Sooner than for ${before}: ${now}, not ${then}.`
}
const alike = 0.08

/** `about` says what the option is. */
export const needed = told(({ say, own }, option: string, about: string, readsAsThing: boolean) =>
  readsAsThing ? say`I need the ${own(option)} to answer that.` : say`I need to know ${own(about)}.`,
)

export const pictureLeftOut = ({ say }: Locale): Text =>
  say`The picture is left out, as it could not be drawn in time: ask again in a minute.`

export const tooMuchAtOnce = new Problem({
  final: true,
  what: ({ say }) => say`That is too much at once: ask again in a minute.`,
  expected: ({ say }) => say`a minute until the questions before it are done`,
  example: 'help',
})
