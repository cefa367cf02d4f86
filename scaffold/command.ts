// What a new command consists of: files of its own, a line in two lists, and sentences in the corpus.

import { readFileSync } from 'node:fs'
import { join } from 'node:path'
import type { Entry } from '../src/assistant/command.ts'
import { furtherMessages } from '../training/corpus/read-corpus.ts'

export interface Wanted {
  /** The folder that it stands in, and its place in menus and help. */
  readonly family: string
  readonly name: string
}

/** Families of commands about packs. */
export const families: readonly string[] = ['charge', 'care', 'supply']

export const isFree = (name: string, commands: readonly Entry[]): boolean =>
  !commands.some(command => command.name === name || command.shelf?.endsWith(` ${name}`) || name in command.takes)

/** The whole text of each file that is new or changes, by its path. */
export function filesOf(wanted: Wanted): ReadonlyMap<string, string> {
  const { family, name } = wanted
  const own = (template: string) => filled(readFileSync(join(import.meta.dirname, 'command', template), 'utf8'), wanted)
  const changed = (path: string, before: string, added: string) =>
    [path, inserted(readFileSync(path, 'utf8'), before, added)] as const
  const index = `import { ${name} } from './${family}/${name}.ts'\nimport { ${name}Words } from './${family}/${name}.words.ts'\n`
  const [path, listed] = changed('commands/index.ts', ']\n\nconst help', `  entry(${name}, ${name}Words),\n`)
  return new Map([
    [`commands/${family}/${name}.ts`, own('command.ts.txt')],
    [`commands/${family}/${name}.words.ts`, own('words.ts.txt')],
    [`tests/unit/commands/${name}.test.ts`, own('test.ts.txt')],
    [path, inserted(listed, '\nconst answering', index)],
    changed('src/language/corpus/intents.ts', '] as const', `  '${name}',\n`),
    ['training/corpus/more.jsonl', withSentences('training/corpus/more.jsonl', name, own('sentences.txt'))],
  ])
}

const filled = (template: string, { family, name }: Wanted): string =>
  template.replaceAll('NAME', name).replaceAll('FAMILY', family)

/** Throws an Error where nothing like `before` is in the text: its file has another form by now. */
function inserted(text: string, before: string, added: string): string {
  const at = text.indexOf(before)
  if (at < 0) throw new Error(`"${before}" is nowhere in what should change`)
  return text.slice(0, at) + added + text.slice(at)
}

/** By people of their own, for what one alone writes is not learned. */
function withSentences(corpus: string, intent: string, sentences: string): string {
  const last = Math.max(...furtherMessages().map(({ person }) => person))
  const lines = sentences
    .trimEnd()
    .split('\n')
    .map(line => {
      const [person, ...text] = line.split(' ')
      return JSON.stringify({ part: 'C', person: last + Number(person), text: text.join(' '), intent })
    })
  return `${readFileSync(corpus, 'utf8')}${lines.join('\n')}\n`
}
