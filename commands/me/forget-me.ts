// Deletes everything that is kept about the asker, once they have confirmed it.

import { optional, service } from '../../src/assistant/command.ts'
import { choiceKind } from '../../src/language/kinds/choice-kind.ts'
import { notConfirmed } from './forget-problems.words.ts'

export const forgetMe = service({
  name: 'forget me',
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
