// What a reading took for granted, and what it left out, in words.

import type { Said } from '../../ground/locale.ts'
import { joined } from '../../ground/text.ts'

export const chemistryAssumed =
  (name: string): Said =>
  ({ say, own }) =>
    say`no type was said: taken as ${own(name)}, as most are`

export const cellsAssumed: Said = ({ say }) => say`the number of cells was not said: volts are those of one cell`

export const keptFrom =
  (options: readonly string[]): Said =>
  ({ say, own }) =>
    say`kept from before: ${own(options.join(', '))}`

export const changesNothing =
  (words: readonly string[]): Said =>
  ({ say, own }) =>
    say`this changes nothing: ${joined(
      words.map(word => own(`"${word}"`)),
      ', ',
    )}`

export const notUnderstood =
  (words: readonly string[]): Said =>
  ({ say, own }) =>
    say`not understood: ${joined(
      words.map(word => own(`"${word}"`)),
      ', ',
    )}`

export const readAsAmps =
  (typed: string): Said =>
  ({ say, own }) =>
    say`${own(typed)} is read as amps`

export const readAsPackVolts =
  (typed: string): Said =>
  ({ say, own }) =>
    say`${own(typed)} is read as the volts of the whole pack`
