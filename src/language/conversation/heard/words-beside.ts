// The words of a text that stand beside its values, as they are looked up.

import type { Candidate } from '../../candidates/index.ts'
import { lookedUp } from '../../model/words.ts'

/** A letter alone is an article, or a unit. */
const word = /\p{L}[\p{L}'’-]+/gu

export function wordsBeside(text: string, values: readonly Candidate[]): readonly string[] {
  const isOfValue = (at: number) => values.some(({ start, end }) => at >= start && at < end)
  return [...text.matchAll(word)].filter(({ index }) => !isOfValue(index)).map(([found]) => lookedUp(found))
}

export const countOf = (text: string): number => text.trim().split(/\s+/).length
