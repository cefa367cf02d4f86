// What the room says besides answers.

import type { Locale } from '../ground/locale.ts'
import { joined, type Text } from '../ground/text.ts'

export const welcome = (club: string, { say, own }: Locale): Text =>
  say`Welcome to the bench of the ${own(club)}. Ask about charging; "${own('help')}" lists what I answer.`

/** Headings of what is printed without being asked for. */
export const headings = ({ say }: Locale) => ({
  board: say`On the board`,
  changed: say`Changed on the board`,
  reminder: say`Reminder`,
})

export const pictureAt = (path: string, alternative: Text, { say, own }: Locale): Text =>
  say`Picture: ${own(path)}\n  ${alternative}\n`
export const documentAt = (path: string, { say, own }: Locale): Text => say`Document: ${own(path)}\n`

/** What may be typed after an answer: with the questions that it suggests, and without. */
export const tapsIn = (opens: readonly string[], asks: readonly Text[], { own }: Locale): readonly Text[] => {
  const words = opens.map(own)
  return [joined([...words, ...asks], ' · '), joined(words, ' · ')]
}

/** For a question from the command line, which has no next line. */
export const fullHint = ({ say, own }: Locale): Text => say`${own('--full')} shows all of it.`
