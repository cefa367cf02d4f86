// One page of what each surface does for each feature.

import { discord } from './discord.ts'
import { type Feature, features, type Surface } from './features.ts'
import { interactions } from './interactions.ts'
import { matrix } from './matrix.ts'
import { room } from './room.ts'

export const surfacesFile = 'docs/surfaces.md'

export const surfaces: Readonly<Record<string, Surface>> = {
  'The room': room,
  Discord: discord,
  'Discord by HTTP': interactions,
  Matrix: matrix,
}

const opening = `# What each surface does

The same question gets the same answer everywhere, cautions included: \`tests/contract/same-everywhere.test.ts\` asks every
example of every command by each of these ways in. How each shows it, and what else it does, is here; behind each cell
stands a test, named in \`docs/write/surfaces\`. A dash: the platform has no such thing, or tells us
nothing of it. By HTTP Discord tells of commands and buttons alone: of no edit, no deletion, and of no reply that marks an
answer as wrong.
`

export function surfacesPage(): string {
  const row = (cells: readonly string[]) => `| ${cells.join(' | ')} |`
  const cell = (surface: Surface, feature: Feature) => {
    const shown = surface[feature]
    return typeof shown === 'string' ? '–' : shown[0]
  }
  const rows = (Object.keys(features) as Feature[]).map(feature =>
    row([features[feature], ...Object.values(surfaces).map(surface => cell(surface, feature))]),
  )
  const head = [row(['what', ...Object.keys(surfaces)]), row(['what', ...Object.keys(surfaces)].map(() => '---'))]
  return [opening, ...head, ...rows, ''].join('\n')
}
