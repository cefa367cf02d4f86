// Changes a standard answer; its card changes where it stands.

import { newTitleKind, titleKind } from '../../src/assistant/cards/title.ts'
import { changing } from '../../src/assistant/changing.ts'
import { optional, required, service } from '../../src/assistant/command.ts'
import { questionKind, textKind } from '../../src/language/kinds/text-kinds.ts'
import { changesAnswer, nothingToChange, onlyModeratorsChange, titleTaken } from './answer-problems.words.ts'
import { answerKept, answerTitled, contentOf } from './standing-answer.ts'

export const answerEdit = service({
  name: 'answer edit',
  takes: {
    title: required(titleKind),
    'new-title': optional(newTitleKind),
    question: optional(questionKind),
    text: optional(textKind),
  },
  examples: ['answer edit title: Where we charge text: At the bench by the door, and in the steel box.'],
  changes: true,
  moderators: onlyModeratorsChange,
  confirm: async ({ title, 'new-title': newTitle, question, text }, context) => {
    const answer = await answerTitled(title, context)
    const content = question ?? text
    if (content === undefined && newTitle === undefined) throw nothingToChange
    return changesAnswer(answer, newTitle, content)
  },
  run: async ({ title: asked, 'new-title': newTitle, ...told }, context) => {
    const answer = await answerTitled(asked, context)
    const title = newTitle ?? answer.title
    const content = await contentOf(title, told, context)
    if (!content && newTitle === undefined) throw nothingToChange
    const outcome = await changing(context, async ({ answers }) => {
      const result = await answers.change(answer.id, { ...content, title: newTitle })
      if (result === 'taken') throw titleTaken(title)
      const before = answerKept(answer)
      return {
        result,
        change: result === 'changed' ? { of: 'answer', before, after: { ...before, ...content, title } } : undefined,
      }
    })
    return { title, isThere: outcome === 'changed', hasCard: answer.card !== undefined }
  },
})
