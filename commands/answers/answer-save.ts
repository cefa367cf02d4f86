// Saves a standard answer of the club, posts its card where it is asked, and pins it.

import { newTitleKind } from '../../src/assistant/cards/title.ts'
import { changing } from '../../src/assistant/changing.ts'
import { optional, required, service } from '../../src/assistant/command.ts'
import { questionKind, textKind } from '../../src/language/kinds/text-kinds.ts'
import { noMoreFit, nothingToSave, onlyModeratorsChange, savedAlready } from './answer-problems.words.ts'
import { answerKept, contentOf } from './standing-answer.ts'

/** More pinned messages than a club reads. */
export const mostAnswers = 100

export const answerSave = service({
  name: 'answer save',
  takes: { title: required(newTitleKind), question: optional(questionKind), text: optional(textKind) },
  examples: [
    'answer save title: Small packs at the bench question: current pack: 3S 720 LiHV charger: 0.3/0.8/1.5/3A',
    'answer save title: Where we charge text: At the bench by the door. Nobody charges in a car.',
  ],
  changes: true,
  apart: true,
  moderators: onlyModeratorsChange,
  run: async ({ title, ...told }, context) => {
    const content = await contentOf(title, told, context)
    if (!content) throw nothingToSave
    const { community, place, cards } = context
    const { id } = await changing(context, async ({ answers }) => {
      const answer = { community: community.id, place: place.id, title, ...content }
      const added = await answers.add(answer, mostAnswers)
      if (added === 'full') throw noMoreFit(mostAnswers)
      if (added === 'taken') throw savedAlready(title)
      return { result: added, change: { of: 'answer', after: answerKept(added) } }
    })
    return { standing: await cards.post(id, place.id) }
  },
})
