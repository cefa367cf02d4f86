// What the commands about standard answers say alike: their details, and where a card stands.

import type { Standing } from '../../src/assistant/cards.ts'
import type { OptionWords } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'

export const titleWords = ({ say }: Locale, about: Text): OptionWords => ({ about, as: text => say`"${text}"` })

export const questionWords = ({ say }: Locale): OptionWords => ({
  about: say`the question that it answers; takes all that follows, so it stands last`,
})

export const textWords = ({ say }: Locale): OptionWords => ({
  about: say`or text in your own words; takes all that follows, so it stands last`,
})

/** Where the card stands now, as the end of a sentence about the answer, and what hinders the rest. */
export function standingWords({ posted, pinned, missing }: Standing, locale: Locale): Text {
  const { say } = locale
  if (!posted) return joined([say`but it stands nowhere yet.`, missing?.(locale)])
  return pinned ? say`and it is pinned here.` : joined([say`and it stands here, not pinned.`, missing?.(locale)])
}

export const linkWords = ({ link }: Standing, { say, own }: Locale): Text | undefined =>
  link === undefined ? undefined : say`It is here: ${own(link)}`
