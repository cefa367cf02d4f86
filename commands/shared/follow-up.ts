// Writes the inputs of a question back out, so that a follow-up can ask it with something changed.

import type { Options } from '../../src/assistant/old-command.ts'
import type { FollowUp } from '../../src/assistant/reply.ts'
import { writeQuestion } from '../../src/language/sentence/question.ts'

/** The given inputs in canonical notation. */
export function written(options: Options, inputs: Readonly<Record<string, unknown>>): Record<string, string> {
  return Object.fromEntries(
    Object.entries(options)
      .filter(([name]) => inputs[name] !== undefined)
      .map(([name, { kind }]) => [name, kind.write(inputs[name])]),
  )
}

export const followUp = (label: string, command: string, options: Record<string, string>): FollowUp => ({
  label,
  question: writeQuestion({ command, options }),
})
