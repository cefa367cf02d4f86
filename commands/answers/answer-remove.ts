// Removes a standard answer and takes its card away.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { required, service } from '../../src/assistant/command.ts'
import { answerTitled, refuseMembers } from './standing-answer.ts'

export const answerRemove = service({
  name: 'answer remove',
  takes: { title: required(titleKind) },
  examples: ['answer remove title: Where we charge'],
  changes: true,
  /** What it was; undefined where somebody else has just removed it. */
  run: async ({ title }, context) => {
    refuseMembers(context)
    const { id } = await answerTitled(title, context)
    const removed = await context.memory.answers.remove(id)
    if (removed) await context.cards.takeAway(removed)
    return { content: removed?.content }
  },
})
