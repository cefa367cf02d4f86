// Lists the asker's reminders that are still to come.

import { defineCommand } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { figuresIn } from '../shared/figure.ts'
import { reminderLine } from './reminder-words.ts'

export const remindList = defineCommand({
  name: 'remind list',
  summary: 'Lists your reminders that are still to come.',
  options: {},
  examples: ['remind list'],
  plainWords: ['my reminders'],
  notStanding: true,
  answer: async (_, { asker, memory, now, show }) => {
    const reminders = await memory.reminders.of(asker.id)
    return {
      headline:
        reminders.length > 0 ? `Reminders to come: ${reminders.length}.` : 'You have no reminder to come.',
      figures: [figuresIn(show).count('reminders', 'reminders', reminders.length)],
      working: now ? reminders.map(reminder => reminderLine(reminder, now, show)) : [],
      cautions: [generalCaution],
    }
  },
})
