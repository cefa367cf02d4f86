// From the words of a question to the typed inputs of its command, and back to words for the read-as line.

import type { Said } from '../../ground/locale.ts'
import { Problem } from '../../ground/problem.ts'
import type { Earlier } from '../../language/kinds/value-kind.ts'
import type { Question } from '../../language/sentence/question.ts'
import type { Command, Option } from '../old-command.ts'
import { needed, takesNo, takesOnly } from './inputs.words.ts'

export interface Understood {
  readonly inputs: Readonly<Record<string, unknown>>
  readonly assumed: readonly Said[]
  /** The question in canonical notation. */
  readonly question: Question
  readonly readAs: string
}

/** Throws a Problem where a required detail is missing or a value cannot be read. */
export function understand(command: Command, options: Readonly<Record<string, string>>): Understood {
  refuseUnknown(command, options)
  const inputs: Record<string, unknown> = {}
  const assumed: Said[] = []
  const canonical: Record<string, string> = {}
  const phrases: string[] = []
  for (const [name, option] of Object.entries(command.options)) {
    const text = options[name]?.trim()
    if (!text) {
      if (option.required) throw missing(name, option, command)
      continue
    }
    const read = option.kind.read(text, inputs as Earlier)
    inputs[name] = read.value
    assumed.push(...read.assumed)
    const written = option.kind.write(read.value)
    canonical[name] = written
    phrases.push(option.phrase ? option.phrase(written) : `${name} ${written}`)
  }
  return {
    inputs,
    assumed,
    question: { command: command.name, options: canonical },
    readAs: phrases.join(', ') || command.name,
  }
}

function refuseUnknown(command: Command, options: Readonly<Record<string, string>>): void {
  const names = Object.keys(command.options)
  const unknown = Object.keys(options).find(name => !names.includes(name))
  if (unknown === undefined) return
  throw new Problem({
    what: takesNo(command.name, unknown),
    token: unknown,
    expected: takesOnly(names),
    example: command.examples[0] ?? command.name,
  })
}

/** Names of options that do not read as a thing. */
const prepositions: ReadonlySet<string> = new Set(['from', 'to', 'at', 'by', 'is'])

function missing(name: string, option: Option, command: Command): Problem {
  return new Problem({
    what: needed(name, option.description, !prepositions.has(name)),
    expected: ({ own }) => own(`${name}: ${option.description}`),
    example: command.examples[0] ?? `${name}: ${option.kind.example}`,
  })
}
