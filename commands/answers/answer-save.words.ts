// What is said of a standard answer that was saved.

import type { WordsOf } from '../../src/assistant/command.ts'
import type { answerSave } from './answer-save.ts'
import { linkWords, questionWords, standingWords, textWords, titleWords } from './standing-answer.words.ts'

export const answerSaveWords: WordsOf<typeof answerSave> = locale => {
  const { say, own } = locale
  const quoted = (command: string) => own(`"${command}"`)
  return {
    summary: say`Saves a standard answer under a title and pins its card here; for moderators.`,
    tells: [own('save a standard answer titled Small packs: charge at the bench')],
    takes: {
      title: titleWords(locale, say`the title that it is pinned under`),
      question: questionWords(locale),
      text: textWords(locale),
    },
    answer: ({ standing }, { title }) => [
      say`The standard answer "${own(title)}" is saved, ${standingWords(standing, locale)}`,
    ],
    figures: {},
    working: ({ standing }) => [
      linkWords(standing, locale),
      say`I edit the card when a rule of the club, its kit or my own rules change what it says.`,
      say`${quoted('answer edit')} changes it, ${quoted('answer move')} takes it to another channel, ${quoted('answer remove')} takes it away.`,
    ],
  }
}
