// Patterns over words: what a concept or a rule looks for, written as short text and made ready once.
//
//   word        this word in any of its common forms          =word   exactly this word
//   word*       words that begin so                            @name   a concept of the lexicon
//   a|b         either                                         x?      may be missing
//   .4          up to four words between, within the sentence  :4      the same across sentences
//   #  #<13     a number, a number below 13 (or >, in between: #3-9)
//   !x          the next word is not x

export type Item =
  | { readonly kind: 'gap'; readonly most: number; readonly acrossSentences: boolean }
  | { readonly kind: 'not'; readonly ids: readonly number[] }
  | {
      readonly kind: 'word'
      readonly ids: readonly number[]
      readonly optional: boolean
      readonly low?: number
      readonly high?: number
    }

export interface Pattern {
  readonly items: readonly Item[]
  readonly source: string
}

/** Gives every word, stem, beginning and concept of the patterns a number of its own. */
export class Names {
  readonly #ids = new Map<string, number>()
  /** By kind of sign: exact words, stems, beginnings, concepts. */
  id(sign: string): number {
    const known = this.#ids.get(sign)
    if (known !== undefined) return known
    const id = this.#ids.size
    this.#ids.set(sign, id)
    return id
  }
  get(sign: string): number | undefined {
    return this.#ids.get(sign)
  }
  signs(): IterableIterator<string> {
    return this.#ids.keys()
  }
}

export const anyNumber = '#'

/** Reads one pattern. Throws an Error where it begins with something that may be missing. */
export function patternOf(source: string, names: Names, signOf: (word: string) => string): Pattern {
  const items = source.split(' ').map(part => itemOf(part, names, signOf))
  const first = items[0]
  if (first?.kind !== 'word' || first.optional) throw new Error(`A pattern begins with a word: ${source}`)
  return { items, source }
}

const span = /^#(?:<(?<below>[\d.]+)|>(?<above>[\d.]+)|(?<low>[\d.]+)-(?<high>[\d.]+))?$/

function itemOf(part: string, names: Names, signOf: (word: string) => string): Item {
  const gap = /^([.:])(\d+)$/.exec(part)
  if (gap) return { kind: 'gap', most: Number(gap[2]), acrossSentences: gap[1] === ':' }
  if (part.startsWith('!')) return { kind: 'not', ids: idsOf(part.slice(1), names, signOf) }
  const optional = part.endsWith('?')
  const body = optional ? part.slice(0, -1) : part
  const number = span.exec(body)?.groups
  if (number === undefined) return { kind: 'word', ids: idsOf(body, names, signOf), optional }
  const low = number.above ?? number.low
  const high = number.below ?? number.high
  return {
    kind: 'word',
    ids: [names.id(anyNumber)],
    optional,
    low: low === undefined ? undefined : Number(low),
    high: high === undefined ? undefined : Number(high),
  }
}

const idsOf = (body: string, names: Names, signOf: (word: string) => string): number[] =>
  body.split('|').map(word => names.id(signOf(word)))
