// Takes the card of a standard answer to the channel in which this is asked.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { required, service } from '../../src/assistant/command.ts'
import { answerTitled, refuseMembers } from './standing-answer.ts'

export const answerMove = service({
  name: 'answer move',
  takes: { title: required(titleKind) },
  examples: ['answer move title: Where we charge'],
  changes: true,
  /** Where the card stands now; undefined where it stood here already. */
  run: async ({ title }, context) => {
    refuseMembers(context)
    const { id, place, card } = await answerTitled(title, context)
    const here = context.place.id
    return { standing: card && place === here ? undefined : await context.cards.post(id, here) }
  },
})
