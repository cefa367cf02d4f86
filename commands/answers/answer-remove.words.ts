// What is said of a standard answer that was removed.

import type { WordsOf } from '../../src/assistant/command.ts'
import { undoLine } from '../shared/undo.words.ts'
import type { answerRemove } from './answer-remove.ts'
import { titleWords } from './standing-answer.words.ts'

export const answerRemoveWords: WordsOf<typeof answerRemove> = locale => {
  const { say, own } = locale
  return {
    summary: say`Removes a standard answer and its card; for moderators.`,
    tells: [own('remove the answer Small packs')],
    takes: { title: titleWords(locale, say`its title`) },
    answer: (_, { title }) => [say`Removed: "${own(title)}" is no standard answer any longer.`],
    figures: {},
    working: ({ content }) => [content === undefined ? undefined : say`It was: ${own(content)}`, undoLine(locale)],
  }
}
