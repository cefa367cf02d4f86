// What is said where an answer rests on what nobody told.

import type { doubts } from '../../charging/situation/doubts.ts'
import type { WordsOf } from './lines.ts'

export const doubtWords: WordsOf<typeof doubts> = ({ say, own }) => ({
  chemistryAssumed: ({ found }) => [
    say`If it is ${own(found.known.situation.pack?.chemistry.name ?? '')}, as most are (the volts printed on it tell):`,
  ],
  cellsUnknown: () => [say`The number of cells was not said, so volts are those of one cell.`],
  suspected: () => [
    say`Something in your words sounds wrong: a pack that is puffed, hurt, wet or hot is not charged, and no charge is left alone.`,
  ],
  notUnderstood: () => [
    say`Some words of the question were not understood: look at what was read before you follow this.`,
  ],
  foreignTongue: () => [say`Only a part of this was understood: look at what was read before you follow it.`],
})
