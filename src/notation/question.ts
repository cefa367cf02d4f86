// A question in notation: a command and its `name: value` pairs in any order, `/time pack: 3S 720 LiHV from: 3.7V`.

import { Problem } from '../assistant/problem.ts'
import { plainText, shortened } from './text.ts'
import type { CommandWords, Vocabulary } from './vocabulary.ts'

/** The options hold text as typed; the command's own readers make values of it. */
export interface Question {
  readonly command: string
  readonly options: Readonly<Record<string, string>>
}

const optionName = /(?:^|[ ,;])(\p{L}[\p{L}\d_-]*) ?: ?/gu

/** Throws a Problem for an unknown command or option, an option said twice, and words that belong to none. */
export function readQuestion(text: string, vocabulary: Vocabulary): Question {
  const plain = plainText(text).replace(/^[/!] ?/, '')
  const command = commandAtStart(plain, vocabulary)
  if (!command) {
    throw new Problem({
      what: 'I do not see what you want to know.',
      token: shortened(plain),
      expected: `a question that starts with one of: ${vocabulary.map(({ name }) => name).join(', ')}`,
      example: 'time pack: 3S 720 LiHV current: 1A',
    })
  }
  return { command: command.name, options: readPairs(plain.slice(command.name.length), command) }
}

function commandAtStart(plain: string, vocabulary: Vocabulary): CommandWords | undefined {
  const lower = plain.toLowerCase()
  return vocabulary
    .filter(({ name }) => lower.startsWith(name) && !/^[\p{L}\d_:-]/u.test(lower.slice(name.length)))
    .sort((a, b) => b.name.length - a.name.length)[0]
}

function readPairs(text: string, command: CommandWords): Record<string, string> {
  const options: Record<string, string> = {}
  const names = [...text.matchAll(optionName)]
  for (const [index, match] of names.entries()) {
    const name = (match[1] ?? '').toLowerCase()
    if (!command.options.some(option => option.name === name)) {
      throw new Problem({
        what: `${command.name} takes no "${name}".`,
        token: shortened(match[1] ?? ''),
        expected: `one of: ${command.options.map(option => option.name).join(', ')}`,
        example: command.name,
      })
    }
    options[name] = text.slice(match.index + match[0].length, names[index + 1]?.index).trim()
  }
  return options
}

/** Canonical text; reading it gives the same question. */
export function writeQuestion({ command, options }: Question): string {
  return [command, ...Object.entries(options).map(([name, value]) => `${name}: ${value}`)].join(' ')
}
