// The words of a sentence that nothing accounts for: neither values, nor names, nor words that are known to matter or not.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { isKnownWord } from '../model/index.ts'

const word = /[\p{L}\p{N}](?:[\p{L}\p{M}\p{N}'’.-]*[\p{L}\p{M}\p{N}])?/gu

export interface Span {
  readonly start: number
  readonly end: number
}

/** As typed, in their order, each once. */
export function wordsLeft(text: string, accounted: readonly Span[]): readonly string[] {
  const left = [...text.matchAll(word)].filter(
    ({ index, 0: found }) =>
      !accounted.some(({ start, end }) => index < end && index + found.length > start) &&
      !isKnownWord(found.toLowerCase()),
  )
  return [...new Set(left.map(([found]) => found))]
}

export const spansOf = (values: readonly Candidate[]): readonly Span[] =>
  values.map(({ start, end }) => ({ start, end }))
