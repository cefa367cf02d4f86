// The values that the dangers judge by, read off the words: cell counts, chemistries, volts, amps, capacities, rates.

import { chemistryCalled } from '../../parts/chemistry.ts'
import { numberNamed } from '../../quantities/quantities.ts'
import type { Word } from '../engine/words.ts'

export type Chemistry = 'lipo' | 'lihv' | 'life' | 'liion' | 'nickel' | 'lead'

export interface Value {
  readonly kind:
    | 'count'
    | 'chemistry'
    | 'volts'
    | 'amps'
    | 'mAh'
    | 'rate'
    | 'percent'
    | 'bare'
    | 'celsius'
    | 'minutes'
    | 'wires'
  readonly value: number
  readonly chemistry?: Chemistry
  /** Words from, up to, not including. */
  readonly from: number
  readonly to: number
}

const units = new Map(
  (
    [
      ['count', 's cell cells'],
      ['volts', 'v volt volts'],
      ['amps', 'a amp amps ampere amperes'],
      ['mAh', 'mah milliampere'],
      ['rate', 'c'],
      ['percent', '% percent'],
      ['celsius', 'celsius deg degrees grad'],
      ['minutes', 'min mins minutes minute'],
      ['wires', 'wires pins'],
    ] as const
  ).flatMap(([kind, names]) => names.split(' ').map(name => [name, kind] as const)),
)
/** Beside the spellings of those that are charged here. */
const otherChemistries: Readonly<Record<string, Chemistry>> = {
  lion: 'liion',
  liio: 'liion',
  a123: 'life',
  lithiumiron: 'life',
  nimh: 'nickel',
  nicad: 'nickel',
  nicd: 'nickel',
  nickelmetal: 'nickel',
  pb: 'lead',
  agm: 'lead',
  leadacid: 'lead',
}
const mostWords = 4

/** All values, in the order of the text. */
export function valuesOf(words: readonly Word[]): readonly Value[] {
  const values: Value[] = []
  for (let i = 0; i < words.length; i += 1) {
    const found = numberAt(words, i) ?? chemistryAt(words, i)
    if (found === undefined) continue
    values.push(found)
    i = found.to - 1
  }
  return values
}

function numberAt(words: readonly Word[], i: number): Value | undefined {
  const [word, next, behind] = words.slice(i, i + 3)
  if (word === undefined) return undefined
  const unit = next?.cut === 0 ? next.w : ''
  const kind = units.get(unit)
  const spoken = word.w === 'single' ? 1 : (numberNamed(word.w) ?? 0)
  if (spoken > 0)
    return kind === 'count' || kind === 'minutes' || kind === 'wires'
      ? { kind, value: spoken, from: i, to: i + 2 }
      : undefined
  const { value } = word
  if (value === undefined) return undefined
  // "3.7 a cell".
  if (unit === 'a' && next && next.start > word.end && behind?.cut === 0 && /^cells?$/.test(behind.w))
    return { kind: 'volts', value, from: i, to: i + 1 }
  if (kind === 'amps' && /^(?:h|hour|hours)$/.test(behind?.w ?? ''))
    return { kind: 'mAh', value: value * 1000, from: i, to: i + 3 }
  if (unit === 'ma') return { kind: 'amps', value: value / 1000, from: i, to: i + 2 }
  if (unit === 'ah') return { kind: 'mAh', value: value * 1000, from: i, to: i + 2 }
  if (kind === undefined || (kind === 'count' && (!Number.isInteger(value) || value > 24 || value < 1)))
    return { kind: 'bare', value, from: i, to: i + 1 }
  const isBelowZero = kind === 'celsius' && words[i - 1]?.w === 'minus'
  return { kind, value: isBelowZero ? -value : value, from: i, to: i + 2 }
}

/** A chemistry of the core by the name that it has here. */
export const keyOf = ({ name }: { readonly name: string }): Chemistry =>
  name.replace('-', '').toLowerCase() as Chemistry

/** However its name is parted: "li po", "l i p o", "lithium polymer". */
function chemistryAt(words: readonly Word[], i: number): Value | undefined {
  for (let to = i + mostWords; to > i; to -= 1) {
    const name = words.slice(i, to).reduce((all, { w }) => all + w, '')
    const known = chemistryCalled(name)
    const chemistry = known ? keyOf(known) : otherChemistries[name.replace(/s$/, '')]
    if (chemistry && !(name === 'life' && isLived(words, i)))
      return { kind: 'chemistry', value: 0, chemistry, from: i, to: Math.min(to, words.length) }
  }
  return undefined
}

const lasting = /^(?:long\w*|short\w*|cycles?|service|shelf|calendar|useful|whole|half|more|best|battery|of)$/
const lengthened = /^(?:extend|prolong|shorten|lengthen|preserv|increas|improv|reduc)/
const ofType = /^(?:packs?|batter(?:y|ies)|cells?|mode|program(?:me)?|setting|charger)$/

/** "For longer life", "extend its life": how long a pack lasts, and no type. */
function isLived(words: readonly Word[], at: number): boolean {
  const [before, behind] = [words[at - 1], words[at + 1]]
  if (behind?.cut === 0 && (behind.value !== undefined || ofType.test(behind.w))) return false
  const isLengthened = words.slice(Math.max(0, at - 3), at).some(({ w }) => lengthened.test(w))
  return isLengthened || (words[at]?.cut === 0 && lasting.test(before?.w ?? ''))
}

/** The capacity told of a pack in mAh: with its unit, or bare behind a cell count or before a chemistry. */
export function capacityIn(values: readonly Value[]): number | undefined {
  const told = values.find(({ kind, value }) => kind === 'mAh' && isCapacity(value))
  if (told !== undefined) return told.value
  for (const [i, { kind, value, to }] of values.entries()) {
    const next = values[i + 1]
    if (kind === 'bare' && next?.kind === 'chemistry' && next.from === to && isCapacity(value)) return value
    if (kind === 'count' && next?.kind === 'bare' && next.from <= to + 1 && isCapacity(next.value)) return next.value
  }
  return undefined
}

const isCapacity = (value: number): boolean => value >= 80 && value <= 30000

/** The cell count told of a pack: the first that stands before a capacity or a chemistry, else the first. */
export function countIn(values: readonly Value[]): number | undefined {
  for (const [i, { kind, to, value }] of values.entries()) {
    const next = values[i + 1]
    if (kind !== 'count' || next === undefined || next.from > to + 1) continue
    if (next.kind === 'chemistry' || next.kind === 'mAh' || (next.kind === 'bare' && next.value >= 80)) return value
  }
  return values.find(({ kind }) => kind === 'count')?.value
}

/** The chemistry told of a pack: the first behind a count or a capacity, else the first. */
export function chemistryIn(values: readonly Value[]): Chemistry | undefined {
  for (const [i, { kind, from, chemistry }] of values.entries()) {
    const before = values[i - 1]
    if (
      kind === 'chemistry' &&
      before !== undefined &&
      before.to >= from - 1 &&
      ['count', 'mAh', 'bare'].includes(before.kind)
    )
      return chemistry
  }
  return values.find(({ kind }) => kind === 'chemistry')?.chemistry
}
