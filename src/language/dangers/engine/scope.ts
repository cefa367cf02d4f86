// Whether what was found is denied, long gone, somebody else's, or said of a person.

import type { Lexicon } from './lexicon.ts'
import type { Found, Marked } from './matcher.ts'

const reach = 9
/** Sentences are looked through so far, in words. */
const sentenceReach = 40
const besides = new Set(['to', 'beside', 'by', 'with', 'near', 'behind', 'from', 'under'])
const verbs = new Set(['is', 'are', 'was', 'were'])
const conjunctions = new Set(['and', 'so', 'but', 'or', 'then', 'ok'])
const askers = new Set(['cant', 'couldnt', 'shouldnt', 'wont', 'dont', 'isnt'])

export class Scope {
  readonly #deny: number
  readonly #noDenial: number
  readonly #turns: number
  readonly #asks: number
  readonly #asksAnywhere: number
  readonly #once: number
  readonly #gone: number
  readonly #person: number
  readonly #thing: number

  constructor(lexicon: Lexicon) {
    this.#deny = lexicon.concept('deny')
    this.#noDenial = lexicon.concept('noDenial')
    this.#turns = lexicon.concept('turns')
    this.#asks = lexicon.concept('asks')
    this.#asksAnywhere = lexicon.concept('asksAnywhere')
    this.#once = lexicon.concept('once')
    this.#gone = lexicon.concept('gone')
    this.#person = lexicon.concept('person')
    this.#thing = lexicon.concept('sitsThere')
  }

  /** Which words deny what follows: two denials of one clause lift each other, and "why not" denies nothing. */
  deniers(marked: Marked): boolean[] {
    const denies = marked.words.map(() => false)
    const covered = new Set<number>()
    for (let i = 0; i < denies.length; i += 1) {
      for (const end of marked.sequences[i]?.get(this.#noDenial) ?? []) for (let k = i; k < end; k += 1) covered.add(k)
    }
    let last: number | undefined
    for (let i = 0; i < denies.length; i += 1) {
      const word = marked.words[i]
      if (word === undefined) continue
      if (word.cut > 0 || this.#is(marked, i, this.#turns)) last = undefined
      if (!this.#is(marked, i, this.#deny) || covered.has(i) || this.#isAsked(marked, i)) continue
      if (
        last !== undefined &&
        i - last <= 7 &&
        !['no', 'nor', 'or', 'neither', 'never'].includes(word.w) &&
        i - last > 0
      ) {
        denies[last] = false
        last = undefined
        continue
      }
      denies[i] = true
      last = i
    }
    return denies
  }

  /** Whether something before it in its clause denies it. */
  isDenied({ from }: Found<unknown>, marked: Marked): boolean {
    for (let i = from - 1; i >= 0 && from - i <= reach; i -= 1) {
      const behind = marked.words[i + 1]
      if (behind !== undefined && behind.cut > 0) return false
      if (marked.denies[i]) return true
      if (this.#is(marked, i, this.#turns)) return false
      if (marked.words[i]?.w === 'and' && from - i > 2) return false
    }
    return false
  }

  /** Whether the sentence puts it into the past, or says that the thing is no more. */
  isPast({ from, to }: Found<unknown>, marked: Marked): boolean {
    const { words } = marked
    let clause = true
    for (let i = from; i >= 0 && from - i <= sentenceReach; i -= 1) {
      if (i < from && this.#tellsPast(marked, i, clause)) return true
      const cut = words[i]?.cut ?? 2
      if (cut > 0) clause = false
      if (cut === 2) break
    }
    clause = true
    for (let i = from + 1; i < words.length && i - to <= sentenceReach; i += 1) {
      const cut = words[i]?.cut ?? 2
      if (cut === 2) break
      if (cut > 0 && i >= to) clause = false
      if (i >= to && this.#tellsPast(marked, i, clause)) return true
    }
    return false
  }

  /** Long ago counts within the clause, a pack that is gone within the sentence. */
  #tellsPast(marked: Marked, i: number, clause: boolean): boolean {
    if (this.#is(marked, i, this.#gone) && !this.isDenied({ what: 0, from: i, to: i }, marked)) return true
    return clause && this.#is(marked, i, this.#once) && marked.words[i - 1]?.w !== 'since'
  }

  /**
   * Whether a person, or a thing that is no pack, is what it is said of: the last one named before it. Where its
   * clause names another thing with a verb of its own ("the esc is on the carpet"), that is it.
   */
  isOfPerson({ from }: Found<unknown>, marked: Marked): boolean {
    let isOther = false
    for (let i = from - 1; i >= 0 && from - i <= 12; i -= 1) {
      const before = marked.words[i - 1]?.w ?? ''
      if (this.#is(marked, i, this.#person) && !besides.has(before)) return true
      if (this.#is(marked, i, this.#thing)) return false
      const cut = marked.words[i]?.cut ?? 2
      if (verbs.has(marked.words[i]?.w ?? '') && cut === 0 && !/^(?:that|which|only|all)$/.test(before)) isOther = true
      if (cut > 0 && isOther) return true
      if (cut === 2) return false
    }
    return false
  }

  /** A question for leave or a reason right before a denial makes it none: "why not leave it on". */
  #isAsked(marked: Marked, at: number): boolean {
    const { words } = marked
    for (let i = at; i >= 0 && at - i <= 4; i -= 1) {
      const isFirst = (words[i]?.cut ?? 2) > 0
      const opens = isFirst || conjunctions.has(words[i - 1]?.w ?? '')
      if (i < at && this.#is(marked, i, opens ? this.#asks : this.#asksAnywhere)) return true
      if (isFirst) return i === at && askers.has(words[at]?.w ?? '') && words[at + 1]?.w === 'i'
    }
    return false
  }

  #is = (marked: Marked, at: number, id: number): boolean =>
    (marked.signs[at]?.has(id) ?? false) || (marked.sequences[at]?.has(id) ?? false)
}
