// What is said where a standard answer cannot be saved or changed as it was asked.

import { told } from '../../src/ground/locale.ts'
import { Problem } from '../../src/ground/problem.ts'
import { joined } from '../../src/ground/text.ts'
import type { StandardAnswer } from '../../src/memory/standard-answer.ts'

export const removesAnswer = told(
  ({ say, own }, { title, content }: StandardAnswer) =>
    say`Remove the standard answer "${own(title)}"? It says: "${own(content)}"`,
)

export const changesAnswer = told(
  ({ say, own }, { title, content }: StandardAnswer, newTitle: string | undefined, instead: string | undefined) =>
    joined([
      say`Change the standard answer "${own(title)}"?`,
      newTitle === undefined ? undefined : say`Its title would be "${own(newTitle)}".`,
      instead === undefined ? undefined : say`It says: "${own(content)}" It would say: "${own(instead)}"`,
    ]),
)

export const onlyModeratorsChange = new Problem({
  final: true,
  what: ({ say }) => say`Only moderators change the standard answers of this club.`,
  expected: ({ say }) => say`a moderator to ask for it; anyone can look at them`,
  example: 'answer list',
})

export const untitled = (title: string): Problem =>
  new Problem({
    what: ({ say, own }) => say`There is no standard answer "${own(title)}" here.`,
    token: title,
    expected: ({ say }) => say`the title of one that is saved`,
    example: 'answer list',
  })

export const notBoth = new Problem({
  what: ({ say }) => say`A standard answer is either to a question or in your own words.`,
  expected: ({ say }) => say`question or text, not both`,
  example: 'answer save title: Wren at the bench question: current pack: 3S 720 LiHV',
})

export const nothingToSave = new Problem({
  what: ({ say }) => say`I need to know what the standard answer is.`,
  expected: ({ say }) => say`the title first, then a question to answer, or text in your own words`,
  example: 'answer save title: Small packs question: current pack: 3S 720 LiHV',
})

export const nothingToChange = new Problem({
  what: ({ say }) => say`I need to know what to change.`,
  expected: ({ say, own }) => say`one of ${own('new-title, question, text')}`,
  example: 'answer edit title: Where we charge text: At the bench by the door.',
})

export const noMoreFit = (most: number): Problem =>
  new Problem({
    what: ({ say, show }) => say`This club has ${show.number(most, 0)} standard answers; no more fit.`,
    expected: ({ say }) => say`one to change, or to remove first`,
    example: 'answer list',
  })

export const savedAlready = (title: string): Problem =>
  new Problem({
    what: ({ say, own }) => say`There is a standard answer "${own(title)}" already.`,
    token: title,
    expected: ({ say }) => say`another title, or a change of the one there is`,
    example: `answer edit title: ${title} text: …`,
  })

export const titleTaken = (title: string): Problem =>
  new Problem({
    what: ({ say, own }) => say`There is another standard answer "${own(title)}".`,
    token: title,
    expected: ({ say }) => say`a title that is not taken`,
    example: 'answer list',
  })
