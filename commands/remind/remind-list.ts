// Lists the asker's reminders that are still to come.

import { service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'

export const remindList = service({
  name: 'remind list',
  takes: {},
  examples: ['remind list'],
  notStanding: true,
  run: async (_, { asker, memory, now }) => ({ reminders: await memory.reminders.of(asker.id), now }),
  figures: ({ reminders }) => [figure.count('reminders', reminders.length)],
})
