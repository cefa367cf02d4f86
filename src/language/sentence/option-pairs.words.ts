// What is said of details that a command does not take, or takes twice.

import { type Said, told } from '../../ground/locale.ts'
import { oneOf } from '../../ground/plain-text.words.ts'
import { Problem } from '../../ground/problem.ts'

export const saidTwice = (typed: string, once: string): Problem => {
  const name = typed.toLowerCase()
  return new Problem({
    what: ({ say, own }) => say`That says ${own(name)} twice.`,
    token: `${typed}:`,
    expected: ({ say, own }) => say`${own(name)} once`,
    example: once,
    choices: [{ label: once, question: once }],
  })
}

/** More of them are no help in a chat. */
const mostNamed = 4
const namedByHelp = told(({ say, own }, command: string) => say`what "${own(`help ${command}`)}" lists`)
const noDetails: Said = ({ say }) => say`no further details`
const takesNone = told(({ say, own }, command: string, typed: string, near: string | undefined) =>
  near === undefined
    ? say`"${own(command)}" takes no "${own(typed)}".`
    : say`"${own(command)}" takes no "${own(typed)}". Did you mean "${own(near)}"?`,
)

/** `names` are those that the command takes, `near` the one that was probably meant. */
export const unknownDetail = (
  command: string,
  names: readonly string[],
  { typed, near, ...quoted }: { typed: string; near?: string | undefined; token: string; example: string },
): Problem =>
  new Problem({
    what: takesNone(command, typed, near),
    expected: names.length > mostNamed ? namedByHelp(command) : names.length > 0 ? oneOf(names) : noDetails,
    ...quoted,
  })
