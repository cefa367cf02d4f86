// What a relation between told values may look at, and what it gives.

import type { Danger } from '../../../charging/situation/dangers.ts'
import type { Lexicon } from '../engine/lexicon.ts'
import type { Marked } from '../engine/matcher.ts'
import type { Word } from '../engine/words.ts'
import type { Value } from './values.ts'

export interface Told {
  readonly marked: Marked
  readonly values: readonly Value[]
  /** Whether the word begins a concept of the lexicon. */
  readonly is: (at: number, concept: string) => boolean
  /** Whether the concept stands anywhere. */
  readonly has: (concept: string) => boolean
}

export interface Judged {
  readonly danger: Danger
  /** Words from, up to, not including. */
  readonly from: number
  readonly to: number
}

export type Relation = (told: Told) => Judged | undefined

export function toldOf(marked: Marked, values: readonly Value[], lexicon: Lexicon): Told {
  const is = (at: number, concept: string): boolean => {
    const id = lexicon.concept(concept)
    return (marked.signs[at]?.has(id) ?? false) || (marked.sequences[at]?.has(id) ?? false)
  }
  const known = new Map<string, boolean>()
  const has = (concept: string): boolean => {
    const there = known.get(concept) ?? marked.words.some((_, at) => is(at, concept))
    known.set(concept, there)
    return there
  }
  return { marked, values, is, has }
}

/** The last word of a concept in the `reach` words before `at`, within the sentence. */
export function before({ marked, is }: Told, at: number, concept: string, reach: number): number | undefined {
  for (let i = at - 1; i >= 0 && at - i <= reach; i -= 1) {
    if ((marked.words[i + 1]?.cut ?? 0) === 2) return undefined
    if (is(i, concept)) return i
  }
  return undefined
}

/** Whether a clause ends between two words. */
export const crossesClause = ({ marked }: Told, from: number, to: number): boolean =>
  marked.words.slice(from + 1, to + 1).some(({ cut }) => cut > 0)

/** The clause around a word: words from, up to, not including. */
export function clauseAt({ marked: { words } }: Told, at: number): readonly [from: number, to: number] {
  let [from, to] = [at, at + 1]
  while (from > 0 && words[from]?.cut === 0) from -= 1
  while (to < words.length && words[to]?.cut === 0) to += 1
  return [from, to]
}

/** Words as a text, for what is told by several of them. */
export const textOf = (words: readonly Word[]): string => words.map(({ w }) => w).join(' ')

/** Whether it is typed without a point: "4" may count anything, "4.00" is read off a meter. */
export const isWhole = ({ marked: { words } }: Told, { from }: Value): boolean => /^\d+$/.test(words[from]?.w ?? '')

/** Whether it was so once. */
export const wasOnce = (told: Told, at: number): boolean => before(told, at, 'once', 12) !== undefined
