// The commands by name, and the vocabulary that they give the question reader.

import type { Vocabulary } from '../language/sentence/vocabulary.ts'
import type { Entry } from './command.ts'
import { noSuchCommand } from './registry.words.ts'

export interface Registry {
  /** In help order. */
  readonly commands: readonly Entry[]
  readonly vocabulary: Vocabulary
  find(name: string): Entry | undefined
  /** Throws a Problem where no command bears the name. */
  get(name: string): Entry
}

/** Throws an Error where two commands bear the same name: a fault of the program, not of a question. */
export function createRegistry(commands: readonly Entry[]): Registry {
  const byName = new Map<string, Entry>()
  for (const command of commands) {
    if (byName.has(command.name)) throw new Error(`two commands are named "${command.name}"`)
    byName.set(command.name, command)
  }
  return {
    commands,
    vocabulary: commands.map(({ name, takes, anyOf, everyType, alone, changes }) => {
      const options = Object.entries(takes).map(([option, { kind, required }]) => ({
        name: option,
        kind: kind.name,
        required,
      }))
      return { name, options, anyOf, everyType, alone, changes }
    }),
    find: name => byName.get(name),
    get: name => {
      const command = byName.get(name)
      if (command) return command
      throw noSuchCommand(name, [...byName.keys()], 'help')
    },
  }
}
