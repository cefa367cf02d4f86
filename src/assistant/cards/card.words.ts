// What a card of a standard answer says besides the answer.

import type { Locale } from '../../ground/locale.ts'
import type { Text } from '../../ground/text.ts'

export const ownWords = ({ say }: Locale): Text => say`a standard answer in the words of this club's moderators`

/** The title first; a colon parts it from the answer where it has no end of its own. */
export const entitled = (title: string, text: string, { own }: Locale): Text =>
  own(`${title}${/[.?!]$/.test(title) ? '' : ':'} ${text}`)
