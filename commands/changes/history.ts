// Who changed what in this club, and when: its rules, its standard answers, its kit.

import { optional, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'

/** What fits a screen; who looks for more wants the backup. */
const mostShown = 10
const mostLooked = 200

export const history = service({
  name: 'history',
  takes: { about: optional(choiceKind('matter', ['rules', 'answers', 'kit'])) },
  examples: ['history', 'history about: rules'],
  notStanding: true,
  run: async ({ about }, { memory, community }) => {
    const kind = about === 'answers' ? 'answer' : about
    const all = await memory.history.latest(community.id, mostLooked)
    return { changes: all.filter(({ change }) => kind === undefined || change.of === kind).slice(0, mostShown) }
  },
  figures: ({ changes }) => [figure.count('changes', changes.length)],
})
