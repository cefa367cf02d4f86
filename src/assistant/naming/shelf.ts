// Where each command stands in a menu: few names at the top, so that people find theirs.

import type { Entry } from '../command.ts'

export interface Shelf {
  readonly family: string
  /** Absent where the command stands by itself. */
  readonly sub?: string
}

export function shelfOf({ name, shelf = name }: Pick<Entry, 'name' | 'shelf'>): Shelf {
  const [family = shelf, sub] = shelf.split(' ')
  return sub === undefined ? { family } : { family, sub }
}

/** The name of the command that stands there; also by its own name, under which it stood before. */
export function commandAt(family: string, sub: string | undefined, commands: readonly Entry[]): string {
  const place = sub === undefined ? family : `${family} ${sub}`
  return commands.find(({ shelf }) => shelf === place)?.name ?? place
}
