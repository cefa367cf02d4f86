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

export const anyNumber = '#'

/** Reads one pattern, with the number of each of its signs. Throws an Error where it begins with something that may be missing. */
export function patternOf(source: string, idOf: (word: string) => number): Pattern {
  const items = source.split(' ').map(part => itemOf(part, idOf))
  const first = items[0]
  if (first?.kind !== 'word' || first.optional) throw new Error(`A pattern begins with a word: ${source}`)
  return { items, source }
}

const span = /^#(?:<(?<below>[\d.]+)|>(?<above>[\d.]+)|(?<low>[\d.]+)-(?<high>[\d.]+))?$/

function itemOf(part: string, idOf: (word: string) => number): Item {
  const gap = /^([.:])(\d+)$/.exec(part)
  if (gap) return { kind: 'gap', most: Number(gap[2]), acrossSentences: gap[1] === ':' }
  if (part.startsWith('!')) return { kind: 'not', ids: idsOf(part.slice(1), idOf) }
  const optional = part.endsWith('?')
  const body = optional ? part.slice(0, -1) : part
  const number = span.exec(body)?.groups
  if (number === undefined) return { kind: 'word', ids: idsOf(body, idOf), optional }
  const low = number.above ?? number.low
  const high = number.below ?? number.high
  return {
    kind: 'word',
    ids: [idOf(anyNumber)],
    optional,
    low: low === undefined ? undefined : Number(low),
    high: high === undefined ? undefined : Number(high),
  }
}

const idsOf = (body: string, idOf: (word: string) => number): number[] => body.split('|').map(idOf)
