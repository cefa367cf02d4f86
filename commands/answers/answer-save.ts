// Saves a standard answer of the club, posts its card where it is asked, and pins it.

import { newTitleKind } from '../../src/assistant/cards/title.ts'
import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import { Problem } from '../../src/ground/problem.ts'
import { questionKind, textKind } from '../../src/language/kinds/text-kinds.ts'
import {
  contentOf,
  linkLines,
  questionDescription,
  refuseMembers,
  standingWords,
  textDescription,
} from './answer-words.ts'

/** More pinned messages than a club reads. */
const mostAnswers = 100

export const answerSave = defineCommand({
  name: 'answer save',
  summary: 'Saves a standard answer under a title and pins its card here; for moderators.',
  options: {
    title: required(newTitleKind, { description: 'what its card is headed', phrase: text => `"${text}"` }),
    question: optional(questionKind, { description: questionDescription }),
    text: optional(textKind, { description: textDescription }),
  },
  examples: [
    'answer save title: Small packs at the bench question: current pack: 3S 720 LiHV charger: 0.5/1/2/4A',
    'answer save title: Where we charge text: At the bench by the door. Nobody charges in a car.',
  ],
  changes: true,
  answer: async ({ title, ...said }, context) => {
    refuseMembers(context)
    const content = await contentOf(title, said, context)
    if (!content) throw nothingToSave
    const { community, place, memory, cards } = context
    const added = await memory.answers.add(
      { community: community.id, place: place.id, title, ...content },
      mostAnswers,
    )
    if (added === 'full') throw full
    if (added === 'taken') throw taken(title)
    const standing = await cards.post(added.id, place.id)
    return {
      headline: `The standard answer "${title}" is saved, ${standingWords(standing, context.locale)}`,
      working: [
        ...linkLines(standing),
        'I edit the card when a rule of the house, the kit of the club or my own rules change what it says.',
        '"answer edit" changes it, "answer move" takes it to another channel, "answer remove" takes it away.',
      ],
      cautions: [generalCaution],
    }
  },
})

const nothingToSave = new Problem({
  what: 'I need to know what the standard answer is.',
  expected: 'the title first, then a question to answer, or text in your own words',
  example: 'answer save title: Small packs question: current pack: 3S 720 LiHV',
})

const full = new Problem({
  what: `This club has ${mostAnswers} standard answers; no more fit.`,
  expected: 'one to change, or to remove first',
  example: 'answer list',
})

const taken = (title: string): Problem =>
  new Problem({
    what: `There is a standard answer "${title}" already.`,
    token: title,
    expected: 'another title, or a change of the one there is',
    example: `answer edit title: ${title} text: …`,
  })
