// Removes a standard answer and takes its card away.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { answerTitled, refuseMembers } from './answer-words.ts'

export const answerRemove = defineCommand({
  name: 'answer remove',
  summary: 'Removes a standard answer and its card; for moderators.',
  options: { title: required(titleKind, { description: 'its title', phrase: text => `"${text}"` }) },
  examples: ['answer remove title: Where we charge'],
  changes: true,
  answer: async ({ title }, context) => {
    refuseMembers(context)
    const { id } = await answerTitled(title, context)
    const removed = await context.memory.answers.remove(id)
    if (removed) await context.cards.takeAway(removed)
    return {
      headline: `Removed: "${title}" is no standard answer any longer.`,
      working: removed ? [`It was: ${removed.content}`] : [],
      cautions: [generalCaution],
    }
  },
})
