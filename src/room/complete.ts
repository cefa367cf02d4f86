// Tab completion: command names first, then option names, then values of the option being written.

import type { Entry } from '../assistant/command.ts'
import type { Occasion } from '../assistant/occasion.ts'
import type { Assistant } from '../assistant/running/assistant.ts'

/** What Tab offers for a line, and the end of the line that each offer replaces (readline's shape). */
export async function completeLine(
  assistant: Assistant,
  occasion: Occasion,
  line: string,
): Promise<[string[], string]> {
  const { commands } = assistant.registry
  const command = longestNamed(commands, line)
  if (!command)
    return [
      startingWith(
        line,
        commands.map(({ name }) => `${name} `),
      ),
      line,
    ]

  const options = Object.keys(command.takes)
  const open = openOption(line, options)
  const word = line.slice(line.lastIndexOf(' ') + 1)
  const names = startingWith(
    word,
    options.filter(name => !line.includes(`${name}:`)).map(name => `${name}: `),
  )
  if (!open) return [names, word]
  const values = await assistant.complete(command.name, open.name, open.text, occasion)
  return values.length > 0 ? [values.map(value => `${value} `), open.text] : [names, word]
}

function longestNamed(commands: readonly Entry[], line: string): Entry | undefined {
  return commands
    .filter(({ name }) => line.startsWith(`${name} `))
    .reduce<Entry | undefined>((best, next) => (next.name.length > (best?.name.length ?? 0) ? next : best), undefined)
}

/** The option that the line ends in, and its value as far as it is written. */
function openOption(line: string, options: readonly string[]): { name: string; text: string } | undefined {
  const colon = line.lastIndexOf(':')
  const name = options.find(option => line.slice(0, colon).endsWith(` ${option}`))
  if (colon < 0 || name === undefined) return undefined
  return { name, text: line.slice(colon + 1).trimStart() }
}

function startingWith(prefix: string, candidates: readonly string[]): string[] {
  return candidates.filter(candidate => candidate.startsWith(prefix))
}
