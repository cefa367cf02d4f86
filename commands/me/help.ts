// What the assistant answers: every command in a line, or one command in full.

import { type Entry, optional, service } from '../../src/assistant/command.ts'
import { noSuchCommand, oneOfCommands } from '../../src/assistant/registry.words.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

/** Help on those commands; they are looked at when help is asked, so that it can be one of them. */
export const helpOn = (commands: () => readonly Entry[]) =>
  service({
    name: 'help',
    takes: { about: optional(commandKind(commands)) },
    examples: ['help', 'help about: current'],
    run: () => ({ commands: commands() }),
  })

function commandKind(commands: () => readonly Entry[]): ValueKind<Entry> {
  const names = () => commands().map(({ name }) => name)
  return {
    name: 'command',
    example: 'time',
    read: text => {
      const wanted = text.trim().toLowerCase()
      const command = commands().find(({ name }) => name === wanted)
      if (command) return { value: command, assumed: [] }
      throw new Problem({
        what: noSuchCommand(wanted),
        token: text,
        expected: oneOfCommands(names()),
        example: 'help about: time',
      })
    },
    write: ({ name }) => name,
    complete: prefix => names().filter(name => name.startsWith(prefix.trim().toLowerCase())),
  }
}
