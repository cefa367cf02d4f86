// The strict way to read a thing: its parts in any order, from the first word to the last, and nothing else.

import { problemAt, shortened } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { Sentence } from '../candidates/sentence/sentence.ts'
import type { DimensionName } from '../quantities/dimensions.ts'
import { type Narrower, quantityAt } from '../quantities/quantity.ts'
import { decimalText, oddNumberProblem } from '../scan/number.ts'
import { cannotPlace, notCovered } from '../scan/scan.words.ts'
import { namesForeign } from './foreign-chemistries.ts'

/** Reads the part at this token into the draft and gives the token behind it; undefined, and nothing told, where none stands. */
export type PartOf<Draft> = (sentence: Sentence, at: number, draft: Draft) => number | undefined

export interface Grammar<Draft> {
  readonly part: PartOf<Draft>
  /** The figures it is told by, each within what makes sense for it. */
  readonly figures: readonly (readonly [DimensionName, Narrower?])[]
  readonly wanted: Wanted
}

const gap = /^[,;/]$/

/** Reads the whole plain text into the draft; throws a Problem that names the first word that is no part, or a figure out of its range. */
export function readWhole<Draft>(text: string, { part, figures, wanted }: Grammar<Draft>, draft: Draft): void {
  const sentence = new Sentence(text, false)
  if (sentence.tokens.length === 0) throw problemAt(text, nothingThere, wanted)
  for (let at = 0; at < sentence.tokens.length; ) {
    const isSigned = /^[+-]$/.test(sentence.word(at)) && !sentence.glued(at)
    if (isSigned || sentence.numerals[at])
      for (const [dimension, narrower] of figures) quantityAt(sentence, at, dimension, narrower)
    const end = part(sentence, at, draft) ?? (gap.test(sentence.word(at)) ? at + 1 : undefined)
    if (end === undefined) throw misplaced(text.slice(sentence.tokens[at]?.start), wanted)
    // Figures of one unit: what stands first was looked at.
    for (const { kind, word } of sentence.tokens.slice(at + 1, end)) if (kind === 'number') decimalText(word, wanted)
    at = end
  }
}

function misplaced(rest: string, wanted: Wanted): Problem {
  const word = shortened((rest.split(' ')[0] ?? '').replace(/[,;]+$/, ''))
  return (
    oddNumberProblem(rest, wanted) ??
    problemAt(word, namesForeign(word, []) ? notCovered(word) : cannotPlace(word), wanted)
  )
}
