// What could be asked next: the same question with something changed, or another one about the same things.

import type { Takes } from '../../src/assistant/command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import type { Text } from '../../src/ground/text.ts'
import { writeQuestion } from '../../src/language/sentence/question.ts'

type Options = Readonly<Record<string, string | undefined>>

/** The given values in canonical notation. */
export function written(takes: Takes, asked: Readonly<Record<string, unknown>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(takes)
      .filter(([name]) => asked[name] !== undefined)
      .map(([name, { kind }]) => [name, kind.write(asked[name])]),
  )
}

export const followUp = (label: Text, command: string, options: Options = {}): FollowUp => ({
  label,
  question: writeQuestion({
    command,
    options: Object.fromEntries(
      Object.entries(options).filter((pair): pair is [string, string] => pair[1] !== undefined),
    ),
  }),
})

/** Asks with what was given, and with changes; a change to undefined leaves it out. */
export const asksAgain =
  (takes: Takes, asked: Readonly<Record<string, unknown>>) =>
  (label: Text, command: string, changes: Options = {}): FollowUp =>
    followUp(label, command, { ...written(takes, asked), ...changes })
