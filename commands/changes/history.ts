// Who changed what in this club, and when: its rules, its standard answers, its kit.

import { optional, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import type { NotedChange } from '../../src/memory/memory.ts'

/** What fits a screen; who looks for more wants the backup. */
const mostShown = 10
const mostLooked = 200

export const matters = ['rules', 'answers', 'kit'] as const
type Matter = (typeof matters)[number]

/** Whether a change is of that; of anything where nothing is said. */
export const ofMatter =
  (about: Matter | undefined) =>
  ({ change }: NotedChange): boolean =>
    about === undefined || change.of === (about === 'answers' ? 'answer' : about)

export const history = service({
  name: 'history',
  takes: { about: optional(choiceKind('matter', matters)) },
  examples: ['history', 'history about: rules'],
  notStanding: true,
  run: async ({ about }, { memory, community }) => {
    const all = await memory.history.latest(community.id, mostLooked)
    return { changes: all.filter(ofMatter(about)).slice(0, mostShown) }
  },
  figures: ({ changes }) => [figure.count('changes', changes.length)],
})
