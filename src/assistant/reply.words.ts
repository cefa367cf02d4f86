// What every reply ends with.

import type { Locale } from '../ground/locale.ts'
import { joined, type Text } from '../ground/text.ts'
import type { StandardAnswer } from '../memory/standard-answer.ts'

export const deferenceIn = ({ say }: Locale): Text => say`The datasheet and local rules come first.`

/** Where the community has the answer standing already. */
export const standingWords = ({ title, card }: Pick<StandardAnswer, 'title' | 'card'>, { say, own }: Locale): Text => {
  const named = say`the standard answer "${own(title)}" of this club`
  return card?.link ? joined([named, own(card.link)], ', ') : named
}
