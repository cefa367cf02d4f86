// What stands before the lines of a short answer. The verdict is a word before it is a mark: the sun bleaches marks.

import type { Locale } from '../../ground/locale.ts'
import { joined, type Text } from '../../ground/text.ts'
import type { Verdict } from '../reply.ts'

export const verdictWords = ({ say }: Locale): Readonly<Record<Verdict | 'ask', Text>> => ({
  go: say`GO ✅`,
  'go with care': say`CARE ⚠️`,
  'do not charge': say`NO ⛔`,
  ask: say`ASK ❓`,
})

export const readingWords = (readAs: Text, assumed: readonly Text[], { say }: Locale): Text =>
  assumed.length === 0 ? say`Read as: ${readAs}` : say`Read as: ${readAs}. Assumed: ${joined(assumed, '; ')}`

export const standingLine = (seeAlso: Text, { say }: Locale): Text => say`See also: ${seeAlso}`
export const warned = (text: Text, { say }: Locale): Text => say`⚠️ ${text}`
export const step = (number: number, text: Text, { say, own }: Locale): Text => say`${own(String(number))} ${text}`

/** Behind the first of a list. */
export const moreWords = (count: number, { say, show }: Locale): Text => say`… and ${show.number(count, 0)} more`

export const expectedWords = (token: string, expected: Text, { say, own }: Locale): Text =>
  token === '' ? say`I need ${expected}.` : say`At "${own(token)}" I need ${expected}.`

/** The asker's own question corrected, or one that would do. */
export const tryWords = (question: Text, { say }: Locale): Text => say`Try: ${question}`
