// What is said of details that a command does not take, or takes twice.

import type { Said } from '../../ground/locale.ts'

export const saidTwice =
  (name: string): Said =>
  ({ say, own }) =>
    say`That says ${own(name)} twice.`

export const sayOnce =
  (name: string): Said =>
  ({ say, own }) =>
    say`${own(name)} once`

/** `near` is the detail that was probably meant. */
export const takesNone =
  (command: string, typed: string, near: string | undefined): Said =>
  ({ say, own }) =>
    near === undefined
      ? say`${own(command)} takes no "${own(typed)}".`
      : say`${own(command)} takes no "${own(typed)}". Did you mean "${own(near)}"?`

export const oneOfDetails =
  (names: readonly string[]): Said =>
  ({ say, own }) =>
    names.length > 0 ? say`one of: ${own(names.join(', '))}` : say`no further details`
