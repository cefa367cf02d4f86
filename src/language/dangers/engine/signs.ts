// Which signs of the patterns a typed word stands for: itself, its stem, its beginning, a concept, a near word.

import { NearWords } from './near.ts'
import { anyNumber } from './pattern.ts'
import { formsOf, type Word } from './words.ts'

const longestMemory = 4000

/** A word of a pattern as a sign: `=exact`, `beginning*`, `@concept`, or any form of a word. */
export function signOf(word: string): string {
  if (word.startsWith('@') || word === anyNumber) return word
  if (word.startsWith('=')) return word
  if (word.endsWith('*')) return word
  return `~${word}`
}

/** Knows the signs of each word. `plain` are all single words of the lists, with the signs they stand for. */
export class Signs {
  readonly #stands: ReadonlyMap<string, readonly number[]>
  #beginnings: readonly string[] | undefined
  readonly #ordinary: ReadonlySet<string>
  readonly #known = new Map<string, ReadonlySet<number>>()
  #near: NearWords | undefined

  /** `stands`: for every word and beginning, the numbers of the concepts it is one of, and its own. */
  constructor(stands: ReadonlyMap<string, readonly number[]>, ordinary: ReadonlySet<string>) {
    this.#stands = stands
    this.#ordinary = ordinary
  }

  /** What was found of words before a pattern brought new ones holds no longer. */
  findAnew(): void {
    this.#known.clear()
    this.#beginnings = undefined
    this.#near = undefined
  }

  of(word: Word): ReadonlySet<number> {
    const key = word.value === undefined ? word.w : anyNumber
    const known = this.#known.get(key)
    if (known !== undefined) return known
    const found = word.value === undefined ? this.#find(word) : new Set(this.#stands.get(anyNumber))
    if (this.#known.size > longestMemory) this.#known.clear()
    this.#known.set(key, found)
    return found
  }

  #find(word: Word): ReadonlySet<number> {
    const found = new Set<number>()
    if (!this.#add(word.w, found)) for (const near of this.#nearWords().of(word.w)) this.#add(near, found)
    this.#beginnings ??= [...this.#stands.keys()].filter(sign => sign.endsWith('*'))
    for (const sign of this.#beginnings) if (word.w.startsWith(sign.slice(0, -1))) this.#add(sign, found)
    return found
  }

  #add(sign: string, found: Set<number>): boolean {
    const ids = this.#stands.get(sign)
    for (const id of ids ?? []) found.add(id)
    return ids !== undefined
  }

  #nearWords(): NearWords {
    this.#near ??= new NearWords(
      [...this.#stands.keys()].filter(word => !word.endsWith('*')),
      this.#ordinary,
    )
    return this.#near
  }
}

export function standingFor(sign: string): readonly string[] {
  if (sign.startsWith('=')) return [sign.slice(1)]
  return sign.startsWith('~') ? formsOf(sign.slice(1)) : [sign]
}
