// Takes the card of a standard answer to the channel in which this is asked.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { answerTitled, linkLines, refuseMembers, standingWords } from './answer-words.ts'

export const answerMove = defineCommand({
  name: 'answer move',
  summary: 'Takes the card of a standard answer to this channel; for moderators.',
  options: { title: required(titleKind, { description: 'its title', phrase: text => `"${text}"` }) },
  examples: ['answer move title: Where we charge'],
  changes: true,
  answer: async ({ title }, context) => {
    refuseMembers(context)
    const { id, place, card } = await answerTitled(title, context)
    if (card && place === context.place.id) {
      return { headline: `The card of "${title}" is in this channel already.`, cautions: [generalCaution] }
    }
    const standing = await context.cards.post(id, context.place.id)
    return {
      headline: standing.posted
        ? `The card of "${title}" is moved, ${standingWords(standing, context.locale)}`
        : `The card of "${title}" is left where it was. ${standing.missing?.(context.locale) ?? ''}`.trim(),
      working: linkLines(standing),
      cautions: [generalCaution],
    }
  },
})
