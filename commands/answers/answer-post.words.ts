// What is said of a card that was posted again.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { answerPost } from './answer-post.ts'
import { linkWords, titleWords } from './standing-answer.words.ts'

export const answerPostWords: WordsOf<typeof answerPost> = locale => {
  const { say, own } = locale
  return {
    summary: say`Posts the card of a standard answer again where it was deleted; for moderators.`,
    tells: [own('post the answer Small packs')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: ({ standing }, { title }) => [
      standing.posted
        ? say`The card of "${own(title)}" stands in its channel.`
        : say`The card of "${own(title)}" stands nowhere now.`,
      standing.missing?.(locale),
    ],
    figures: {},
    working: ({ standing }) => [
      linkWords(standing, locale),
      say`A card that people have unpinned stays unpinned: pin it by hand where you want it pinned again.`,
    ],
  }
}
