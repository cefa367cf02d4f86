// What is said of a text that is too long to stand in a message.

import type { Said } from '../../ground/locale.ts'

export const tooLong =
  (characters: number): Said =>
  ({ say, show }) =>
    say`That text is ${show.number(characters, 0)} characters long.`

export const atMost =
  (characters: number): Said =>
  ({ say, show }) =>
    say`at most ${show.number(characters, 0)} characters, so that it fits a message`
