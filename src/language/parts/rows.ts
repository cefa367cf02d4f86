// Several figures that share a unit: lists ("0.3/0.8/1.5/3A", "1, 2 or 3 amps") and two ends ("10-26V").

import { problemAt } from '../../ground/plain-text.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import type { Numeral } from '../quantities/numerals.ts'
import { checked, type Narrower } from '../quantities/quantity.ts'
import { backwards, smallerFirst } from '../scan/scan.words.ts'
import { measured } from './draft.ts'

type Dimension = 'current' | 'voltage'

/** Longer lists are no charger's. */
const mostListed = 20

export interface Row {
  readonly values: readonly number[]
  readonly hasUnit: boolean
  readonly slashes: number
  readonly after: number
}

/** At least one figure, up to the last that has its unit, which holds for those before it; in a detail each is within its range. */
export function rowAt(sentence: Sentence, start: number, dimension: Dimension, narrower?: Narrower): Row | undefined {
  const typed: { numeral: Numeral; value: number | undefined; after: number; slashes: number }[] = []
  let [at, slashes, scale] = [start, 0, 1]
  while (typed.length <= mostListed) {
    const numeral = sentence.numerals[at]
    const unit = measured(sentence, at, dimension)
    if (!numeral || numeral.needsUnit || (!unit && sentence.measures[at]?.length)) break
    const after = unit?.after ?? numeral.after
    typed.push({ numeral, value: unit?.value, after, slashes })
    if (unit) scale = unit.value / Number(unit.decimal)
    const next = sentence.word(after)
    if (next === '/') slashes += 1
    const isSpaced = !sentence.glued(after) && (!unit || (!sentence.isTalk && measured(sentence, after, dimension)))
    if (/^(?:\/|,|or|and)$/.test(next)) at = after + 1
    else if (isSpaced) at = after
    else break
  }
  const last = typed.findLastIndex(({ value }) => value !== undefined)
  const row = last < 0 ? typed : typed.slice(0, last + 1)
  const end = row.at(-1)
  if (!end || row.length > mostListed) return undefined
  // "To 8.4, 150 mA": in talk what has no unit may be another thing, and is no thousandth of it.
  const values = row.map(({ numeral, value = scaled(numeral, sentence.isTalk ? 1 : scale), after }) =>
    sentence.isTalk || last < 0 ? value : checked(value, sentence.typed(numeral.first, after), dimension, narrower),
  )
  return { values, hasUnit: last >= 0, slashes: end.slashes, after: end.after }
}

/** A number in the unit of another one. */
const scaled = ({ value }: Numeral, scale: number): number =>
  scale === 1 ? value : Number((value * scale).toPrecision(12))

/** Two ends of which the second has its unit; in a detail within their range, and the smaller first, or it throws a Problem. */
export function endsAt(sentence: Sentence, at: number, dimension: Dimension, narrower?: Narrower) {
  const low = sentence.numerals[at]
  if (!low || low.needsUnit) return undefined
  const unit = measured(sentence, at, dimension)
  const sign = unit?.after ?? low.after
  if (!/^(?:-|to|up)$/.test(sentence.word(sign))) return undefined
  const high = measured(sentence, sentence.word(sign + 1) === 'to' ? sign + 2 : sign + 1, dimension)
  if (!high) return undefined
  const [from, to] = [unit?.value ?? scaled(low, high.value / Number(high.decimal)), high.value]
  if (!sentence.isTalk) {
    const typed = sentence.typed(at, high.after)
    for (const end of [from, to]) checked(end, typed, dimension, narrower)
    const example = `${high.decimal}-${low.decimal}${sentence.typed(high.numeral.after, high.after)}`
    if (from >= to) throw problemAt(typed, backwards, { expected: smallerFirst, example })
  }
  return { from, to, after: high.after }
}
