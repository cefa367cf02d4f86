// What is kept about the asker: handed out, or deleted once they have confirmed it.

import { optional, service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { notConfirmed } from './forget-problems.words.ts'

export const exportMe = service({
  name: 'export me',
  shelf: 'me export',
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

export const forgetMe = service({
  name: 'forget me',
  shelf: 'me forget',
  takes: { confirm: optional(choiceKind('confirmation', ['forget'], notConfirmed)) },
  examples: ['forget me'],
  changes: true,
  /** What was kept before. */
  run: async ({ confirm }, { asker, memory, forgetConversations, afterwards }) => {
    const kept = await memory.members.export(asker.id)
    if (confirm) {
      await memory.members.forget(asker.id)
      forgetConversations()
      await afterwards(({ memory }) => memory.members.leaveNoTrace())
    }
    return { kept }
  },
})
