// What is said where a word is none of a few.

import { type Said, told } from '../../ground/locale.ts'

export const noSuchChoice: Said = ({ say }) => say`That is none of the choices.`

export const oneOf = told(
  ({ say, own }, choices: readonly string[]) => say`one of: ${own(choices.join(', '))}`,
)
