// Puts the card of a standard answer back where it belongs, after somebody deleted it or it could not be pinned.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { required, service } from '../../src/assistant/command.ts'
import { onlyModeratorsChange } from './answer-problems.words.ts'
import { answerTitled } from './standing-answer.ts'

export const answerPost = service({
  name: 'answer post',
  takes: { title: required(titleKind) },
  examples: ['answer post title: Where we charge'],
  changes: true,
  apart: true,
  moderators: onlyModeratorsChange,
  run: async ({ title }, context) => {
    const { id } = await answerTitled(title, context)
    return { standing: await context.cards.restore(id) }
  },
})
