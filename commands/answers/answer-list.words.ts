// What is said of the standard answers of a club.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import type { StandardAnswer } from '../../src/memory/standard-answer.ts'
import type { answerList } from './answer-list.ts'

export const answerListWords: WordsOf<typeof answerList> = locale => {
  const { say, own } = locale
  return {
    summary: say`Lists the standard answers of this club.`,
    asks: [own('which standard answers are there')],
    takes: {},
    answer: ({ answers }) => {
      const titles = answers.map(({ title }) => own(title))
      return answers.length > 0
        ? [say`Standard answers: ${joined(titles, '; ')}.`]
        : [
            say`This club has no standard answer yet. A moderator saves one with: ${own('answer save title: Small packs question: current pack: 3S 720 LiHV')}`,
          ]
    },
    figures: { standardAnswers: say`standard answers` },
    working: ({ answers, here }) => answers.map(answer => line(answer, here, locale)),
  }
}

function line({ title, kind, content, place, card }: StandardAnswer, here: string, locale: Locale): Text {
  const { say, own } = locale
  const what = kind === 'question' ? own(content) : say`in the own words of the moderators`
  if (!card) return say`${own(title)}: ${what}; it has no card now.`
  const stands = place === here ? say`its card stands here` : say`its card stands in another channel`
  return say`${own(title)}: ${what}; ${joined([stands, card.link === undefined ? undefined : own(card.link)], ', ')}.`
}
