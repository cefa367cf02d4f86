// What is said of details that a command does not take, or takes twice.

import { told } from '../../ground/locale.ts'

export const saidTwice = told(({ say, own }, name: string) => say`That says ${own(name)} twice.`)

export const sayOnce = told(({ say, own }, name: string) => say`${own(name)} once`)

/** `near` is the detail that was probably meant. */
export const takesNone = told(({ say, own }, command: string, typed: string, near: string | undefined) =>
  near === undefined
    ? say`"${own(command)}" takes no "${own(typed)}".`
    : say`"${own(command)}" takes no "${own(typed)}". Did you mean "${own(near)}"?`,
)

export const oneOfDetails = told(({ say, own }, names: readonly string[]) =>
  names.length > 0 ? say`one of: ${own(names.join(', '))}` : say`no further details`,
)
