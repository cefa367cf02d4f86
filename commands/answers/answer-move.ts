// Takes the card of a standard answer to the channel in which this is asked.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { changing } from '../../src/assistant/changing.ts'
import { required, service } from '../../src/assistant/command.ts'
import { onlyModeratorsChange } from './answer-problems.words.ts'
import { answerKept, answerTitled } from './standing-answer.ts'

export const answerMove = service({
  name: 'answer move',
  takes: { title: required(titleKind) },
  examples: ['answer move title: Where we charge'],
  changes: true,
  apart: true,
  moderators: onlyModeratorsChange,
  /** Where the card stands now; undefined where it stood here already. */
  run: async ({ title }, context) => {
    const answer = await answerTitled(title, context)
    const { id, place, card } = answer
    const here = context.place.id
    if (card && place === here) return { standing: undefined }
    const standing = await context.cards.post(id, here)
    const before = answerKept(answer)
    const change = { of: 'answer', before, after: { ...before, place: here } } as const
    if (standing.posted) await changing(context, async () => ({ result: undefined, change }))
    return { standing }
  },
})
