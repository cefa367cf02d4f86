// What is said where an answer rests on what nobody told.

import type { doubts } from '../../charging/situation/doubts.ts'
import type { KeptDanger } from '../../charging/situation/kept.ts'
import type { Pack } from '../../charging/things/pack.ts'
import type { WordsOf } from './lines.ts'
import { maybeWords } from './maybe.words.ts'

const quotesOf = (kept: readonly KeptDanger[] = []): string =>
  [...new Set(kept.map(({ typed }) => `"${typed}"`))].join(', ')

export const doubtWords: WordsOf<typeof doubts> = locale => {
  const { say, show, own } = locale
  return {
    chemistryAssumed: ({ found: { known } }) => {
      const { pack, kindOnly } = known.situation
      const { chemistry, series } = pack as Pack
      const name = own(chemistry.name)
      const ofAny = say`With ${name}, as most are (the volts printed on a pack tell):`
      // Without a pack there is nothing on which volts are printed.
      return kindOnly && series === 1
        ? [ofAny]
        : [say`If it is ${name} (${show.voltage(series * chemistry.nominal_V.value)} printed on it):`, ofAny]
    },
    cellsUnknown: () => [say`The number of cells was not said, so volts are those of one cell.`],
    toldBefore: ({ found }) => {
      const quotes = quotesOf(found.known.situation.kept)
      return [
        quotes === ''
          ? say`You spoke before of something that is wrong: follow this only if you made sure that it does not hold.`
          : say`You spoke before of ${own(quotes)}: follow this only if you made sure that it does not hold.`,
      ]
    },
    cellsByVolts: ({ found }) => [
      say`The number of cells was not said: its volts fit ${own(`${found.known.situation.pack?.series}S`)}, so it is taken as that.`,
    ],
    askedLongAgo: () => [
      say`The pack may have changed since this was asked: look at it and measure it again before you follow this.`,
    ],
    ...maybeWords(locale),
    notUnderstood: () => [
      say`Some words of the question were not understood: look at what was read before you follow this.`,
    ],
    foreignTongue: () => [say`Only a part was understood: check what was read.`],
  }
}
