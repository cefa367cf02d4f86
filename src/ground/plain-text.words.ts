// What is said of a text that cannot be read at all.

import { type Said, told } from './locale.ts'

export const nothingThere: Said = ({ say }) => say`There is nothing to read.`

export const oneOf = told(({ say, own }, names: readonly string[]) => say`one of: ${own(names.join(', '))}`)

export const tooLong = told(
  ({ say, show }, characters: number) => say`That is ${show.number(characters, 0)} characters long.`,
)

export const questionOfAtMost = told(
  ({ say, show }, characters: number) => say`a question of at most ${show.number(characters, 0)} characters`,
)
