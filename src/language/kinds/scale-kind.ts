// The scale factor of a flight controller's current meter: a plain number, whatever its unit there.

import { plainText, problemAt } from '../../ground/plain-text.ts'
import type { Wanted } from '../../ground/problem.ts'
import { decimalText, oddNumberProblem, shiftedDecimal } from '../scan/number.ts'
import { notAScale, scaleRange } from './kinds.words.ts'
import type { ValueKind } from './value-kind.ts'

const range = { least: 0.01, most: 100_000 }
const wanted: Wanted = { expected: scaleRange(range.least, range.most), example: '400' }

export const scaleKind: ValueKind<number> = {
  name: 'scale factor',
  example: wanted.example,
  read: text => {
    const plain = plainText(text)
    const odd = oddNumberProblem(plain, wanted)
    if (odd) throw odd
    const value = Number(decimalText(plain, wanted))
    if (value >= range.least && value <= range.most) return { value, assumed: [] }
    throw problemAt(plain, notAScale, wanted)
  },
  write: value => shiftedDecimal(value, 0),
  complete: () => [],
}
