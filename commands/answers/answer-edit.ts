// Changes a standard answer; its card changes where it stands.

import { newTitleKind, titleKind } from '../../src/assistant/cards/title.ts'
import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import { questionKind, textKind } from '../../src/language/kinds/text-kinds.ts'
import {
  answerTitled,
  contentOf,
  questionDescription,
  refuseMembers,
  textDescription,
} from './answer-words.ts'

export const answerEdit = defineCommand({
  name: 'answer edit',
  summary: 'Changes a standard answer and its card; for moderators.',
  options: {
    title: required(titleKind, { description: 'the title it has', phrase: text => `"${text}"` }),
    'new-title': optional(newTitleKind, {
      description: 'the title it gets',
      phrase: text => `now "${text}"`,
    }),
    question: optional(questionKind, { description: questionDescription }),
    text: optional(textKind, { description: textDescription }),
  },
  examples: ['answer edit title: Where we charge text: At the bench by the door, and in the steel box.'],
  changes: true,
  answer: async ({ title, 'new-title': newTitle, ...said }, context) => {
    refuseMembers(context)
    const answer = await answerTitled(title, context)
    const content = await contentOf(newTitle ?? answer.title, said, context)
    if (!content && newTitle === undefined) throw nothingToChange
    const outcome = await context.memory.answers.change(answer.id, {
      ...content,
      title: newTitle,
    })
    if (outcome === 'taken') throw taken(newTitle ?? title)
    return {
      headline:
        outcome === 'missing'
          ? `The standard answer "${title}" has just been removed, so nothing was changed.`
          : `The standard answer "${newTitle ?? answer.title}" is changed${answer.card ? ', and so is its card' : '; it has no card now'}.`,
      cautions: [generalCaution],
    }
  },
})

const nothingToChange = new Problem({
  what: 'I need to know what to change.',
  expected: 'new-title, question or text',
  example: 'answer edit title: Where we charge text: At the bench by the door.',
})

const taken = (title: string): Problem =>
  new Problem({
    what: `There is another standard answer "${title}".`,
    token: title,
    expected: 'a title that is not taken',
    example: 'answer list',
  })
