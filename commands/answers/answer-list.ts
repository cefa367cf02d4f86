// Lists the standard answers of the club, and where their cards stand.

import { defineCommand } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import type { StandardAnswer } from '../../src/memory/stores/standard-answer.ts'
import { figuresIn } from '../shared/figure.ts'

export const answerList = defineCommand({
  name: 'answer list',
  summary: 'Lists the standard answers of this club.',
  options: {},
  examples: ['answer list'],
  plainWords: ['standard answers', 'what is pinned'],
  notStanding: true,
  answer: async (_, { memory, community, place, show }) => {
    const answers = await memory.answers.list(community.id)
    return {
      headline:
        answers.length > 0
          ? `Standard answers: ${answers.map(({ title }) => title).join('; ')}.`
          : 'This club has no standard answer yet. A moderator saves one with: answer save title: Small packs question: current pack: 3S 720 LiHV',
      figures: [figuresIn(show).count('standardAnswers', 'standard answers', answers.length)],
      working: answers.map(answer => line(answer, place.id)),
      cautions: [generalCaution],
    }
  },
})

function line({ title, kind, content, place, card }: StandardAnswer, here: string): string {
  const what = kind === 'question' ? content : 'in the own words of the moderators'
  const where = place === here ? 'here' : 'in another channel'
  const standing = card
    ? `its card stands ${where}${card.link ? `, ${card.link}` : ''}`
    : 'it has no card now'
  return `${title}: ${what}; ${standing}.`
}
