// The values that the dangers judge by, read off the words: cell counts, chemistries, volts, amps, capacities, rates.

import type { Word } from '../engine/words.ts'

export type Chemistry = 'lipo' | 'lihv' | 'life' | 'liion' | 'nickel' | 'lead'

export interface Value {
  readonly kind: 'count' | 'chemistry' | 'volts' | 'amps' | 'mAh' | 'rate' | 'percent' | 'bare' | 'celsius' | 'minutes'
  readonly value: number
  readonly chemistry?: Chemistry
  /** Words from, up to, not including. */
  readonly from: number
  readonly to: number
}

const numerals: Readonly<Record<string, number>> = {
  one: 1,
  two: 2,
  three: 3,
  four: 4,
  five: 5,
  six: 6,
  seven: 7,
  eight: 8,
  nine: 9,
  ten: 10,
  twelve: 12,
  single: 1,
}
const units: Readonly<Record<string, Value['kind']>> = {
  s: 'count',
  v: 'volts',
  volt: 'volts',
  volts: 'volts',
  a: 'amps',
  amp: 'amps',
  amps: 'amps',
  ampere: 'amps',
  amperes: 'amps',
  mah: 'mAh',
  milliampere: 'mAh',
  c: 'rate',
  celsius: 'celsius',
  deg: 'celsius',
  degrees: 'celsius',
  grad: 'celsius',
  min: 'minutes',
  mins: 'minutes',
  minutes: 'minutes',
  minute: 'minutes',
}
const chemistries: Readonly<Record<string, Chemistry>> = {
  lipo: 'lipo',
  lipos: 'lipo',
  lihv: 'lihv',
  lihvs: 'lihv',
  hv: 'lihv',
  life: 'life',
  lifepo: 'life',
  lifepo4: 'life',
  lfp: 'life',
  a123: 'life',
  liion: 'liion',
  lion: 'liion',
  liio: 'liion',
  ion: 'liion',
  nimh: 'nickel',
  nimhs: 'nickel',
  nicad: 'nickel',
  nicads: 'nickel',
  nicd: 'nickel',
  pb: 'lead',
  agm: 'lead',
}
const spelled: readonly (readonly [readonly string[], Chemistry])[] = [
  [['l', 'i', 'p', 'o'], 'lipo'],
  [['l', 'i', 'h', 'v'], 'lihv'],
  [['l', 'i', 'f', 'e'], 'life'],
  [['li', 'hv'], 'lihv'],
  [['li', 'ion'], 'liion'],
  [['li', 'po'], 'lipo'],
  [['li', 'fe'], 'life'],
  [['lithium', 'polymer'], 'lipo'],
  [['lithium', 'iron'], 'life'],
  [['lithium', 'ion'], 'liion'],
  [['ni', 'mh'], 'nickel'],
  [['n', 'i', 'm', 'h'], 'nickel'],
  [['nickel', 'metal'], 'nickel'],
  [['ni', 'cd'], 'nickel'],
  [['lead', 'acid'], 'lead'],
]

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
  const word = words[i]
  const next = words[i + 1]
  if (word === undefined) return undefined
  const spoken = numerals[word.w]
  if (spoken !== undefined) {
    const unit = next?.w
    if (unit === 'cell' || unit === 'cells') return { kind: 'count', value: spoken, from: i, to: i + 2 }
    if (unit === 's' && next?.cut === 0) return { kind: 'count', value: spoken, from: i, to: i + 2 }
    if (units[unit ?? ''] === 'minutes') return { kind: 'minutes', value: spoken, from: i, to: i + 2 }
    return undefined
  }
  if (word.value === undefined) return undefined
  const unit = next !== undefined && next.cut === 0 ? next.w : ''
  if ((unit === 'cell' || unit === 'cells') && Number.isInteger(word.value) && word.value < 15) {
    return { kind: 'count', value: word.value, from: i, to: i + 2 }
  }
  const kind = units[unit]
  if (
    kind === 'amps' &&
    unit === 'a' &&
    next !== undefined &&
    next.start > word.end &&
    words[i + 2]?.cut === 0 &&
    /^cells?$/.test(words[i + 2]?.w ?? '')
  ) {
    return { kind: 'volts', value: word.value, from: i, to: i + 1 }
  }
  if (kind === 'count' && (!Number.isInteger(word.value) || word.value > 24 || word.value < 1))
    return { kind: 'bare', value: word.value, from: i, to: i + 1 }
  if (unit === 'ma') return { kind: 'amps', value: word.value / 1000, from: i, to: i + 2 }
  if (unit === 'ah') return { kind: 'mAh', value: word.value * 1000, from: i, to: i + 2 }
  if (unit === 'percent' || unit === '%') return { kind: 'percent', value: word.value, from: i, to: i + 2 }
  if (kind === 'amps' && /^(?:h|hour|hours)$/.test(words[i + 2]?.w ?? ''))
    return { kind: 'mAh', value: word.value * 1000, from: i, to: i + 3 }
  const isBelowZero = kind === 'celsius' && words[i - 1]?.w === 'minus'
  if (kind !== undefined) return { kind, value: isBelowZero ? -word.value : word.value, from: i, to: i + 2 }
  return { kind: 'bare', value: word.value, from: i, to: i + 1 }
}

function chemistryAt(words: readonly Word[], i: number): Value | undefined {
  const word = words[i]
  if (word === undefined) return undefined
  const known = chemistries[word.w]
  if (known !== undefined) return { kind: 'chemistry', value: 0, chemistry: known, from: i, to: i + 1 }
  for (const [letters, chemistry] of spelled) {
    if (letters.every((letter, k) => words[i + k]?.w === letter)) {
      return { kind: 'chemistry', value: 0, chemistry, from: i, to: i + letters.length }
    }
  }
  return undefined
}

/** The capacity told of a pack in mAh: with its unit, or bare behind a cell count or before a chemistry. */
export function capacityIn(values: readonly Value[]): number | undefined {
  const told = values.find(({ kind, value }) => kind === 'mAh' && value < 30001 && isCapacity(value))
  if (told !== undefined) return told.value
  for (const [i, { kind, to }] of values.entries()) {
    const next = values[i + 1]
    if (kind === 'bare' && next?.kind === 'chemistry' && next.from === to && isCapacity(values[i]?.value ?? 0))
      return values[i]?.value
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
