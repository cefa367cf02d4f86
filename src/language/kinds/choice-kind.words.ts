// What is said where a word is none of a few.

import type { Said } from '../../ground/locale.ts'

export const noSuchChoice: Said = ({ say }) => say`That is none of the choices.`

export const oneOf =
  (choices: readonly string[]): Said =>
  ({ say, own }) =>
    say`one of: ${own(choices.join(', '))}`
