// What is said of a text that is too long to stand in a message.

import { told } from '../../ground/locale.ts'

export const tooLong = told(
  ({ say, show }, characters: number) => say`That text is ${show.number(characters, 0)} characters long.`,
)

export const atMost = told(
  ({ say, show }, characters: number) =>
    say`at most ${show.number(characters, 0)} characters, so that it fits a message`,
)
