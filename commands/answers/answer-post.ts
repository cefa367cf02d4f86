// Puts the card of a standard answer back where it belongs, after somebody deleted it or it could not be pinned.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { answerTitled, linkLines, refuseMembers } from './answer-words.ts'

export const answerPost = defineCommand({
  name: 'answer post',
  summary: 'Posts the card of a standard answer again where it was deleted; for moderators.',
  options: { title: required(titleKind, { description: 'its title', phrase: text => `"${text}"` }) },
  examples: ['answer post title: Where we charge'],
  changes: true,
  answer: async ({ title }, context) => {
    refuseMembers(context)
    const { id } = await answerTitled(title, context)
    const standing = await context.cards.restore(id)
    return {
      headline: standing.posted
        ? `The card of "${title}" stands in its channel. ${standing.missing?.(context.locale) ?? ''}`.trim()
        : `The card of "${title}" stands nowhere now. ${standing.missing?.(context.locale) ?? ''}`.trim(),
      working: [
        ...linkLines(standing),
        'A card that people have unpinned stays unpinned: pin it by hand where you want it pinned again.',
      ],
      cautions: [generalCaution],
    }
  },
})
