// Who changed what in this club, and when: its rules, its standard answers, its kit.

import { service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'

/** What fits a screen; who looks for more wants the backup. */
const mostShown = 10

export const history = service({
  name: 'history',
  takes: {},
  examples: ['history'],
  notStanding: true,
  run: async (_, { memory, community }) => ({ changes: await memory.history.latest(community.id, mostShown) }),
  figures: ({ changes }) => [figure.count('changes', changes.length)],
})
