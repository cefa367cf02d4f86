// A chemistry that stands alone; inside of a pack it is a part of that.

import { chemistryAt, noType } from '../../parts/chemistry.ts'
import type { Family } from '../sentence/sentence.ts'

export const findChemistries: Family = sentence =>
  sentence.tokens.flatMap((_, first) => {
    const { name, after, score } = chemistryAt(sentence, first) ?? { name: '', after: 0, score: 0 }
    return score > noType ? [{ kind: 'chemistry', text: name, first, after, score }] : []
  })
