// Hands a person everything that is kept about them.

import { defineCommand } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { figuresIn } from '../shared/figure.ts'
import { memberLines } from './member-lines.ts'

export const exportMe = defineCommand({
  name: 'export me',
  summary: 'Hands you everything I keep about you; in direct messages.',
  options: {},
  examples: ['export me'],
  notStanding: true,
  answer: async (_, { asker, place, memory, show }) => {
    if (!place.direct) {
      return {
        headline: 'Ask me this in a direct message: here everybody would read it.',
        cautions: [generalCaution],
      }
    }
    const data = await memory.members.export(asker.id)
    const kept = Object.values(data).reduce((sum, records) => sum + records.length, 0)
    return {
      headline:
        kept > 0
          ? `Records that I keep about you: ${kept}. All of them are here.`
          : 'I keep nothing about you.',
      figures: [figuresIn(show).count('records', 'records kept', kept)],
      working: memberLines(data),
      documents:
        kept > 0
          ? [{ name: 'about-me.json', mediaType: 'application/json', text: JSON.stringify(data, null, 2) }]
          : [],
      cautions: [generalCaution],
    }
  },
})
