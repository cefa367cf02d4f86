// What is said of a command that there is none of.

import { told } from '../ground/locale.ts'

export const noSuchCommand = told(({ say, own }, name: string) => say`I know no command "${own(name)}".`)

export const oneOfCommands = told(({ say, own }, names: readonly string[]) => say`one of: ${own(names.join(', '))}`)
