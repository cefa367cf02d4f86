// Shows a standard answer to whoever asks, as its card would be now.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import { answerTitled } from './answer-words.ts'

export const answerShow = defineCommand({
  name: 'answer show',
  summary: 'Shows a standard answer of this club as it is now.',
  options: { title: required(titleKind, { description: 'its title', phrase: text => `"${text}"` }) },
  examples: ['answer show title: Where we charge'],
  notStanding: true,
  answer: async ({ title }, context) => {
    const answer = await answerTitled(title, context)
    const { verdict, headline, figures, working, cautions, assumed, readAs, problem } =
      await context.cards.render(context.community.id, answer)
    return {
      verdict,
      headline: problem ? `${headline} A moderator can mend it with "answer edit".` : headline,
      figures,
      working: [`It is ${answer.kind === 'question' ? `the answer to: ${readAs}` : readAs}.`, ...working],
      cautions,
      assumed,
    }
  },
})
