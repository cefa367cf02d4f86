// Removes a standard answer and takes its card away.

import { titleKind } from '../../src/assistant/cards/title.ts'
import { changing } from '../../src/assistant/changing.ts'
import { required, service } from '../../src/assistant/command.ts'
import { onlyModeratorsChange, removesAnswer } from './answer-problems.words.ts'
import { answerKept, answerTitled } from './standing-answer.ts'

export const answerRemove = service({
  name: 'answer remove',
  takes: { title: required(titleKind) },
  examples: ['answer remove title: Where we charge'],
  changes: true,
  moderators: onlyModeratorsChange,
  confirm: async ({ title }, context) => {
    return removesAnswer(await answerTitled(title, context))
  },
  /** What it was; undefined where somebody else has just removed it. */
  run: async ({ title }, context) => {
    const { id } = await answerTitled(title, context)
    const removed = await changing(context, async ({ answers }) => {
      const gone = await answers.remove(id)
      return { result: gone, change: gone && { of: 'answer', before: answerKept(gone) } }
    })
    if (removed) await context.afterwards(({ cards }) => cards.takeAway(removed))
    return { content: removed?.content }
  },
})
