// What is said where an answer rests on what nobody told.

import type { doubts } from '../../charging/situation/doubts.ts'
import type { WordsOf } from './lines.ts'

export const doubtWords: WordsOf<typeof doubts> = ({ say }) => ({
  chemistryAssumed: () => [say`The type of the cells was not said: read it off the label before you set anything.`],
  notUnderstood: () => [
    say`Some words of the question were not understood: look at what was read before you follow this.`,
  ],
  foreignTongue: () => [say`Only a part of this was understood: look at what was read before you follow it.`],
  rateQuestioned: () => [
    say`Nobody charges that fast: the large C number on a pack is for flying. It was not taken as a charge rate.`,
  ],
})
