// What is said of a command that there is none of.

import type { Said } from '../ground/locale.ts'

export const noSuchCommand =
  (name: string): Said =>
  ({ say, own }) =>
    say`I know no command "${own(name)}".`

export const oneOfCommands =
  (names: readonly string[]): Said =>
  ({ say, own }) =>
    say`one of: ${own(names.join(', '))}`
