// Several things in one value, with ";" between them and how many before each: `2x 0.5/1/2A 50W; 0.1-10A by 0.1`.

import { plainText, problemAt } from '../../ground/plain-text.ts'
import { nothingThere } from '../../ground/plain-text.words.ts'
import { Problem } from '../../ground/problem.ts'
import type { Read } from '../scan/read.ts'
import { type Listed, moreThan, numberOf, severalOf } from '../scan/scan.words.ts'
import { readCount } from './quantities.ts'

export interface Counted<T> {
  readonly count: number
  readonly item: T
}

export interface ListRules {
  readonly listed: Listed
  /** Most of them, counted one by one. */
  readonly most: number
  readonly example: string
}

const separator = / ?; ?/u
/** Not the numeral of a current or a capacity: the "x" stands for "times". */
const leadingCount = /^(\d{1,3}) ?x ?(?=\S)/iu

/** Reads each entry with `readItem`. Throws a Problem for an empty list, for too many, and what `readItem` throws. */
export function readList<T>(
  text: string,
  rules: ListRules,
  readItem: (text: string) => Read<T>,
): Read<readonly Counted<T>[]> {
  const plain = plainText(text)
  const entries = plain.split(separator).filter(entry => entry !== '')
  const wanted = { expected: severalOf(rules.listed, rules.most), example: rules.example }
  if (entries.length === 0) throw new Problem({ what: nothingThere, ...wanted })
  const read = entries.map(entry => {
    const counted = leadingCount.exec(entry)
    const { value: item, assumed } = readItem(counted ? entry.slice(counted[0].length) : entry)
    const count = counted ? readCount(counted[1] ?? '', { phrase: numberOf(rules.listed), max: rules.most }) : 1
    return { value: { count, item }, assumed }
  })
  const value = read.map(entry => entry.value)
  if (value.reduce((sum, { count }) => sum + count, 0) > rules.most) {
    throw problemAt(plain, moreThan(rules.listed, rules.most), wanted)
  }
  return { value, assumed: read.flatMap(entry => entry.assumed) }
}

/** Canonical text; reading it gives the same list. */
export function writeList<T>(entries: readonly Counted<T>[], writeItem: (item: T) => string): string {
  return entries.map(({ count, item }) => `${count > 1 ? `${count}x ` : ''}${writeItem(item)}`).join('; ')
}
