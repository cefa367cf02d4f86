// A page for each command, made from the command itself: what it takes, and what it answers to its examples.

import { commands } from '../../commands/index.ts'
import type { Entry } from '../../src/assistant/command.ts'
import { english } from '../../src/ground/locale.ts'
import { roomOccasion } from '../../src/room/occasion.ts'
import { renderText } from '../../src/room/render-text.ts'
import { withDemoAssistant } from '../../tests/support/demo-assistant.ts'

export const pagesFolder = 'docs/commands'

const locale = english('.')

/** File names and their text, an overview first. Made in an empty demo club, where no clock is known. */
export async function commandPages(): Promise<ReadonlyMap<string, string>> {
  const pages = new Map([['README.md', overview()]])
  for (const command of commands) pages.set(fileOf(command), await page(command))
  return pages
}

const fileOf = ({ name }: Entry): string => `${name.replaceAll(' ', '-')}.md`

function overview(): string {
  const rows = commands.map(command => `| [${command.name}](${fileOf(command)}) | ${command.words(locale).summary} |`)
  return ['# The commands', '', '| command | what it answers |', '|---|---|', ...rows, ''].join('\n')
}

async function page(command: Entry): Promise<string> {
  const { name, examples } = command
  const { summary } = command.words(locale)
  return [
    `# ${name}`,
    '',
    summary,
    '',
    ...optionTable(command),
    '## Examples',
    '',
    ...examples.map(example => `- \`${example}\``),
    '',
    ...(await answered(command)),
  ].join('\n')
}

function optionTable({ takes, words }: Entry): string[] {
  const described = words(locale).takes
  const rows = Object.entries(takes).map(
    ([option, { required, kind }]) =>
      `| ${option}${required ? '' : ' (if you like)'} | ${cell(described[option]?.about ?? '')} | \`${cell(kind.example)}\` |`,
  )
  return rows.length > 0 ? ['| detail | what it is | such as |', '|---|---|---|', ...rows, ''] : []
}

const cell = (text: string): string => text.replaceAll('|', '\\|')

/** The first example that an empty club can answer. */
function answered({ examples }: Entry): Promise<string[]> {
  return withDemoAssistant(async assistant => {
    for (const example of examples) {
      const reply = await assistant.answer(example, roomOccasion())
      if (reply.problem) continue
      const text = renderText(reply, { width: 100, colour: false })
      return ['```room', `ask> ${example}`, text, '```', '']
    }
    return []
  })
}
