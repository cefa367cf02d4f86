// The commands of the assistant by name, for tests that need a few of them.

import { commands } from '../../commands/index.ts'
import type { Entry } from '../../src/assistant/command.ts'

/** Throws an Error where there is none of that name: a fault of the test. */
export function commandNamed(name: string): Entry {
  const found = commands.find(command => command.name === name)
  if (!found) throw new Error(`no command is named "${name}"`)
  return found
}
