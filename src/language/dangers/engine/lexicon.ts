// Makes a lexicon of concepts ready: which words stand for which, and which sequences of words.

import { addTo } from '../../../ground/add-to.ts'
import { Index, type Marked } from './matcher.ts'
import { patternOf } from './pattern.ts'
import { Signs, signOf, standingFor } from './signs.ts'
import type { Word } from './words.ts'

/** Concepts by name; each is a list of patterns with commas between. A pattern may use concepts above its own. */
export type Concepts = Readonly<Record<string, string>>

export class Lexicon {
  /** Every word, stem, beginning and concept of the patterns has a number of its own. */
  readonly #ids = new Map<string, number>()
  readonly #stands = new Map<string, number[]>()
  /** Sequences by how deep they stand on other sequences. */
  readonly #levels: Index<number>[] = []
  readonly #depths = new Map<string, number>()
  readonly #signs: Signs

  constructor(concepts: Concepts, ordinary: ReadonlySet<string>) {
    this.#signs = new Signs(this.#stands, ordinary)
    for (const [name, list] of Object.entries(concepts)) this.#learn(`@${name}`, list)
  }

  /** Reads a pattern on this lexicon. Throws an Error where it names a concept that is not there. */
  pattern(source: string) {
    return patternOf(source, word => {
      const sign = signOf(word)
      if (sign.startsWith('@') && !this.#depths.has(sign)) throw new Error(`No concept ${sign} in "${source}"`)
      return this.#idOf(sign)
    })
  }

  /** Every word of the lists, in its common forms. */
  listed(): readonly string[] {
    return [...this.#stands.keys()].filter(word => /^[a-z]+$/.test(word))
  }

  concept(name: string): number {
    const id = this.#ids.get(`@${name}`)
    if (id === undefined) throw new Error(`No concept @${name}`)
    return id
  }

  /** The signs of the words, and the sequences among them. `deniers` finds which words deny, once the signs are there. */
  mark(words: readonly Word[], deniers: (marked: Marked) => boolean[]): Marked {
    const signs = words.map(word => this.#signs.of(word))
    const sequences = words.map(() => new Map<number, number[]>())
    const place = (id: number, from: number, to: number) => addTo(sequences[from] as Map<number, number[]>, id, to)
    const bare: Marked = { words, signs, sequences, denies: words.map(() => false) }
    for (const { what, from, to } of this.#levels[0]?.find(bare) ?? []) place(what, from, to)
    const marked: Marked = { ...bare, denies: deniers(bare) }
    for (const level of this.#levels.slice(1)) {
      for (const { what, from, to } of level.find(marked)) place(what, from, to)
    }
    return marked
  }

  #idOf(sign: string): number {
    const known = this.#ids.get(sign)
    if (known !== undefined) return known
    const id = this.#ids.size
    this.#ids.set(sign, id)
    this.#signs.findAnew()
    if (!sign.startsWith('@')) this.#stand(sign, id)
    return id
  }

  #learn(concept: string, list: string): void {
    const id = this.#idOf(concept)
    let deepest = 0
    const sequences: string[] = []
    for (const source of sourcesIn(list)) {
      if (/^[^ #|?]+$/.test(source) && !source.startsWith('@')) this.#stand(signOf(source), id)
      else if (/^@\S+$/.test(source) && this.#depths.get(source) === 0) this.#inherit(source, id)
      else sequences.push(source)
    }
    for (const source of sequences) {
      const used = source.match(/@\w+/g) ?? []
      deepest = Math.max(deepest, 1, ...used.map(name => 1 + (this.#depths.get(name) ?? 0)))
    }
    this.#depths.set(concept, deepest)
    for (const source of sequences) {
      const level = deepest - 1
      while (this.#levels.length <= level) this.#levels.push(new Index<number>())
      this.#levels[level]?.add(this.pattern(source), id)
    }
  }

  #stand(sign: string, id: number): void {
    for (const word of standingFor(sign)) addTo(this.#stands, word, id)
  }

  /** The words of one concept are words of another too. */
  #inherit(from: string, to: number): void {
    const id = this.#idOf(from)
    for (const ids of this.#stands.values()) if (ids.includes(id) && !ids.includes(to)) ids.push(to)
  }
}

export const sourcesIn = (list: string): readonly string[] =>
  list
    .replace(/\s+/g, ' ')
    .split(',')
    .map(part => part.trim())
    .filter(part => part !== '')
