// Shows a standard answer to whoever asks, as its card would be now.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { required, service } from '../../src/assistant/command.ts'
import { answerTitled } from './standing-answer.ts'

export const answerShow = service({
  name: 'answer show',
  takes: { title: required(titleKind) },
  examples: ['answer show title: Where we charge'],
  notStanding: true,
  run: async ({ title }, context) => {
    const answer = await answerTitled(title, context)
    return { kind: answer.kind, shown: await context.cards.render(context.community.id, answer) }
  },
  handsOn: ({ shown }) => shown,
})
