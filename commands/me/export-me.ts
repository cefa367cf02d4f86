// Hands a person everything that is kept about them.

import { service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'

export const exportMe = service({
  name: 'export me',
  takes: {},
  examples: ['export me'],
  notStanding: true,
  /** Nothing where others would read it too. */
  run: async (_, { asker, place, memory }) => {
    if (!place.direct) return { kept: undefined, count: 0 }
    const kept = await memory.members.export(asker.id)
    return { kept, count: Object.values(kept).reduce((sum, records) => sum + records.length, 0) }
  },
  figures: ({ kept, count }) => (kept ? [figure.count('records', count)] : []),
  documents: ({ kept, count }) =>
    count > 0 ? [{ name: 'about-me.json', mediaType: 'application/json', text: JSON.stringify(kept, null, 2) }] : [],
})
