// Lists the standard answers of the club, and where their cards stand.

import { service } from '../../src/assistant/command.ts'
import { figure } from '../../src/assistant/quantified.ts'

export const answerList = service({
  name: 'answer list',
  takes: {},
  examples: ['answer list'],
  notStanding: true,
  run: async (_, { memory, community, place }) => ({
    answers: await memory.answers.list(community.id),
    here: place.id,
  }),
  figures: ({ answers }) => [figure.count('standardAnswers', answers.length)],
})
