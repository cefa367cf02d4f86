// Any number: what is left where nothing else fits.

import type { Family } from '../sentence/sentence.ts'

export const findNumbers: Family = (sentence, before) => {
  const unnamed = new Set(before.filter(({ text }) => text === '').map(({ first }) => first))
  return sentence.numerals.flatMap(numeral =>
    // "One" by itself stands for a thing.
    numeral && !numeral.needsUnit && !(numeral.spelled && numeral.value === 1) && !unnamed.has(numeral.first)
      ? [{ kind: 'number' as const, text: numeral.decimal, first: numeral.first, after: numeral.after, score: 0.1 }]
      : [],
  )
}
