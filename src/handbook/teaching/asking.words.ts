// What is said of how a question of a lesson is answered.

import type { Said } from '../../ground/locale.ts'

export const aLetter =
  (first: string, last: string): Said =>
  ({ say, own }) =>
    say`a letter, ${own(first)} to ${own(last)}`

export const noChoice: Said = ({ say }) => say`That is none of the choices.`
