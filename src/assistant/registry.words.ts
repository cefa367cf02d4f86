// What is said of a command that there is none of.

import { oneOf } from '../ground/plain-text.words.ts'
import { Problem } from '../ground/problem.ts'

export const noSuchCommand = (name: string, names: readonly string[], example: string): Problem =>
  new Problem({
    what: ({ say, own }) => say`I know no command "${own(name)}".`,
    token: name,
    expected: oneOf(names),
    example,
  })
