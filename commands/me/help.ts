// What the assistant answers: by theme, the commands of one theme, or one command in full; and what to a greeting.

import { type Entry, optional, service } from '../../src/assistant/command.ts'
import { noSuchCommand } from '../../src/assistant/registry.words.ts'
import type { ValueKind } from '../../src/language/kinds/value-kind.ts'

export const hello = service({
  name: 'hello',
  shelf: 'learn hello',
  takes: {},
  examples: ['hello'],
  notStanding: true,
  run: () => ({}),
})

/** What people ask about, and the families of commands that answer it: the first command stands for its theme. */
export const themes = {
  charging: ['charge', 'remind'],
  sources: ['supply'],
  packs: ['care', 'kit', 'log'],
  club: ['club', 'answer', 'me'],
  learning: ['learn', 'help'],
} as const satisfies Readonly<Record<string, readonly string[]>>

export type Theme = keyof typeof themes
type About = { readonly kind: 'theme'; readonly theme: Theme } | { readonly kind: 'command'; readonly command: Entry }

/** Help on those commands; they are looked at when help is asked, so that it can be one of them. */
export const helpOn = (commands: () => readonly Entry[]) =>
  service({
    name: 'help',
    takes: { about: optional(aboutKind(commands)) },
    examples: ['help', 'help about: charging', 'help about: current'],
    run: () => ({ commands: commands() }),
  })

const isTheme = (name: string): name is Theme => Object.hasOwn(themes, name)

function aboutKind(commands: () => readonly Entry[]): ValueKind<About> {
  const names = () => [...Object.keys(themes), ...commands().map(({ name }) => name)]
  return {
    name: 'command',
    example: 'charging',
    read: text => {
      const wanted = text.trim().toLowerCase()
      if (isTheme(wanted)) return { value: { kind: 'theme', theme: wanted }, assumed: [] }
      const command = commands().find(({ name }) => name === wanted)
      if (command) return { value: { kind: 'command', command }, assumed: [] }
      throw noSuchCommand(wanted, Object.keys(themes), 'charging')
    },
    write: about => (about.kind === 'theme' ? about.theme : about.command.name),
    complete: prefix => names().filter(name => name.startsWith(prefix.trim().toLowerCase())),
  }
}
