// What a card says besides its answer, why it was not posted, and what is said of a title that cannot be one.

import { type Locale, type Said, told } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'
import type { Author } from '../../memory/memory.ts'

export const ownWords = ({ say }: Locale): Text => say`a standard answer in the words of this club's moderators`

/** "2026-11-29 18:30 UTC". */
export const whenWords = (at: Date, { own }: Locale): Text =>
  own(`${at.toISOString().slice(0, 16).replace('T', ' ')} UTC`)

/** Who changed the answer last; not by name where they are forgotten. */
export const changedWords = ({ at, name }: Pick<Author, 'at' | 'name'>, locale: Locale): Text => {
  const when = whenWords(at, locale)
  return name === '' ? locale.say`Changed ${when}.` : locale.say`Changed ${when} by ${locale.own(name)}.`
}

/** The title first; a colon parts it from the answer where it has no end of its own. */
export const entitled = (title: string, text: string, { own }: Locale): Text =>
  own(`${title}${/[.?!]$/.test(title) ? '' : ':'} ${text}`)

export const onlyAnswers: Said = ({ say }) => say`Here I can only answer, not post by myself.`
export const notTaken: Said = ({ say, own }) =>
  say`The chat did not take it just now; ${own('"answer post"')} tries again.`

export const leftBehind: Said = ({ say }) =>
  say`The card that stood elsewhere could not be taken away: delete it by hand.`

export const noTitle: Said = ({ say }) => say`That cannot be a title.`

export const titleWanted = told(
  ({ say, show }, longest: number) => say`letters or digits, ${show.number(longest, 0)} characters at most, no colon`,
)
