// What is said besides a standard answer that is shown.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { answerShow } from './answer-show.ts'
import { titleWords } from './standing-answer.words.ts'

export const answerShowWords: WordsOf<typeof answerShow> = locale => {
  const { say, own } = locale
  return {
    summary: say`Shows a standard answer of this club as it is now.`,
    tells: [own('show the answer Small packs')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: ({ shown }) => [
      own(shown.headline),
      shown.problem ? say`A moderator can mend it with "${own('answer edit')}".` : undefined,
    ],
    figures: {},
    working: ({ kind, shown }) => [
      kind === 'question' ? say`It is the answer to: ${own(shown.readAs)}.` : say`It is ${own(shown.readAs)}.`,
    ],
  }
}
