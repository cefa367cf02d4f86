// Any number: what is left where nothing else fits, and what tells nothing of a charge, without a text.

import type { Family } from '../sentence/sentence.ts'

export const findNumbers: Family = (sentence, before) => {
  const unnamed = new Set(before.filter(({ text }) => text === '').map(({ first }) => first))
  const asides = sentence.asides.map(aside => ({ kind: 'number' as const, text: '', ...aside, score: 0.9 }))
  const numbers = sentence.numerals.flatMap(numeral =>
    // "One" by itself stands for a thing.
    numeral && !numeral.needsUnit && !(numeral.spelled && numeral.value === 1) && !unnamed.has(numeral.first)
      ? [{ kind: 'number' as const, text: numeral.decimal, first: numeral.first, after: numeral.after, score: 0.1 }]
      : [],
  )
  return [...asides, ...numbers]
}
