// Finds patterns in the words of a text: concepts first, each on those before it, then the rules.

import { addTo } from '../../../ground/add-to.ts'
import type { Item, Pattern } from './pattern.ts'
import type { Word } from './words.ts'

/** Where a pattern stands: words `from` up to, not including, `to`. */
export interface Found<T> {
  readonly what: T
  readonly from: number
  readonly to: number
}

/** A text in words, with what each may stand for, and where sequences of words stand for a concept. */
export interface Marked {
  readonly words: readonly Word[]
  readonly signs: readonly ReadonlySet<number>[]
  /** By word: ends of the sequences that begin there, by number of the concept. */
  readonly sequences: readonly Map<number, number[]>[]
  /** Whether the word denies what follows it. */
  readonly denies: readonly boolean[]
}

interface Entry<T> {
  readonly pattern: Pattern
  readonly what: T
  /** Of each word that may not be missing, the signs of which one has to stand somewhere. */
  readonly needs: readonly (readonly number[])[]
}

/** Patterns by the sign they begin with. */
export class Index<T> {
  readonly #byFirst = new Map<number, Entry<T>[]>()

  add(pattern: Pattern, what: T): void {
    const [first = [], ...needs] = pattern.items.flatMap(item =>
      item.kind === 'word' && !item.optional ? [item.ids] : [],
    )
    const entry = { pattern, what, needs }
    for (const id of first) addTo(this.#byFirst, id, entry)
  }

  /** Every pattern at every word, the shortest match of each, in the order of the text. */
  find(marked: Marked): Found<T>[] {
    const found: Found<T>[] = []
    const places = placesIn(marked)
    const tried = new Map<Entry<T>, Set<number>>()
    for (const [id, positions] of places) {
      for (const entry of this.#byFirst.get(id) ?? []) {
        if (!entry.needs.every(ids => ids.some(need => places.has(need)))) continue
        for (const from of positions) {
          if (isTried(entry, from, tried)) continue
          const to = endOf(entry.pattern.items, 0, from, marked)
          if (to !== undefined) found.push({ what: entry.what, from, to })
        }
      }
    }
    return found.sort((a, b) => a.from - b.from)
  }
}

/** By sign and concept, the words where it begins. */
function placesIn({ signs, sequences }: Marked): ReadonlyMap<number, number[]> {
  const places = new Map<number, number[]>()
  const add = (id: number, at: number) => {
    const there = places.get(id)
    if (there === undefined) places.set(id, [at])
    else if (there.at(-1) !== at) there.push(at)
  }
  for (let at = 0; at < signs.length; at += 1) {
    for (const id of signs[at] ?? []) add(id, at)
    for (const id of sequences[at]?.keys() ?? []) add(id, at)
  }
  return places
}

/** Whether a pattern that may begin with several signs was tried at this word; from now on it is. */
function isTried<T>(entry: Entry<T>, from: number, tried: Map<Entry<T>, Set<number>>): boolean {
  const first = entry.pattern.items[0]
  if (first?.kind !== 'word' || first.ids.length === 1) return false
  const there = tried.get(entry)
  if (there?.has(from)) return true
  if (there === undefined) tried.set(entry, new Set([from]))
  else there.add(from)
  return false
}

/** Where the items from `at` on end when they begin at the word `from`; undefined where they do not stand there. */
function endOf(items: readonly Item[], at: number, from: number, marked: Marked): number | undefined {
  const item = items[at]
  if (item === undefined) return from
  if (item.kind === 'gap') return endOfGap(item, items, at, from, marked)
  const word = marked.words[from]
  if (item.kind === 'not') {
    const there = word !== undefined && at > 0 && word.cut < 2 && standsAt(item.ids, from, marked)
    return there ? undefined : endOf(items, at + 1, from, marked)
  }
  if (word !== undefined && (at === 0 || word.cut === 0 || items[at - 1]?.kind === 'gap') && isWithin(item, word)) {
    const signs = marked.signs[from]
    const sequences = marked.sequences[from]
    let single = false
    for (const id of item.ids) {
      if (!single && signs?.has(id)) {
        single = true
        const to = endOf(items, at + 1, from + 1, marked)
        if (to !== undefined) return to
      }
      for (const end of (sequences?.size && sequences.get(id)) || []) {
        const to = endOf(items, at + 1, end, marked)
        if (to !== undefined) return to
      }
    }
  }
  return item.optional ? endOf(items, at + 1, from, marked) : undefined
}

function endOfGap(
  gap: Item & { kind: 'gap' },
  items: readonly Item[],
  at: number,
  from: number,
  marked: Marked,
): number | undefined {
  for (let skipped = 0; skipped <= gap.most; skipped += 1) {
    const here = from + skipped
    const word = marked.words[here]
    if (word === undefined || (word.cut === 2 && !gap.acrossSentences)) break
    const to = endOf(items, at + 1, here, marked)
    if (to !== undefined) return to
    if (marked.denies[here]) break
  }
  return undefined
}

function isWithin(item: Item & { kind: 'word' }, { value }: Word): boolean {
  if (item.low === undefined && item.high === undefined) return true
  if (value === undefined) return false
  return (item.low === undefined || value > item.low - 1e-9) && (item.high === undefined || value < item.high + 1e-9)
}

const standsAt = (ids: readonly number[], from: number, { signs, sequences }: Marked): boolean =>
  ids.some(id => signs[from]?.has(id) || sequences[from]?.has(id))
