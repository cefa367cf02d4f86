// What the assistant answers: every command in a line, or one command in full.

import { type Command, defineCommand, optional } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

/** Help on these commands and on itself. */
export function helpOn(others: readonly Command[]): Command {
  const all = (): readonly Command[] => [help, ...others]
  const help: Command = defineCommand({
    name: 'help',
    summary: 'What I answer; with a command, how to ask it.',
    options: { about: optional(commandKind(all), { description: 'a command' }) },
    examples: ['help', 'help about: current'],
    plainWords: ['help me', 'what can you do', 'what do you answer', 'how do i ask'],
    answer: ({ about: command }) => (command ? helpAbout(command) : overview(all())),
  })
  return help
}

function overview(commands: readonly Command[]): Answer {
  return {
    headline:
      'Ask in plain words or with a command and its details, for example: how long for 2S 450 LiPo at 0.5A',
    working: [
      ...commands.map(({ name, summary }) => `${name}: ${summary}`),
      'Details go by name in any order (time pack: 3S 720 LiHV current: 1A). "help about: time" tells more of one.',
    ],
    cautions: [generalCaution],
  }
}

function helpAbout({ name, summary, options, examples }: Command): Answer {
  return {
    headline: `${name}: ${summary}`,
    working: [
      ...Object.entries(options).map(
        ([option, { required, description, kind }]) =>
          `${option}${required ? '' : ' (if you like)'}: ${description}, such as ${kind.example}`,
      ),
      ...examples.map(example => `Try: ${example}`),
    ],
    cautions: [generalCaution],
  }
}

function commandKind(commands: () => readonly Command[]): ValueKind<Command> {
  const names = () => commands().map(({ name }) => name)
  return {
    name: 'command',
    example: 'time',
    read: text => {
      const wanted = text.trim().toLowerCase()
      const command = commands().find(({ name }) => name === wanted)
      if (command) return { value: command, assumed: [] }
      throw new Problem({
        what: `I know no command "${wanted}".`,
        token: text,
        expected: `one of: ${names().join(', ')}`,
        example: 'help about: time',
      })
    },
    write: ({ name }) => name,
    complete: prefix => names().filter(name => name.startsWith(prefix.trim().toLowerCase())),
  }
}
