// What is said of a text that cannot be read at all.

import type { Said } from './locale.ts'

export const nothingThere: Said = ({ say }) => say`There is nothing to read.`

export const tooLong =
  (characters: number): Said =>
  ({ say, show }) =>
    say`That is ${show.number(characters, 0)} characters long.`

export const questionOfAtMost =
  (characters: number): Said =>
  ({ say, show }) =>
    say`a question of at most ${show.number(characters, 0)} characters`
