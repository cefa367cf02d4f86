// Every choice of packs out of a bag, numbered; and every way to split one into two.

import { sumOf } from '../numbers/sum.ts'

export interface Multisets {
  /** How many there are; 0 is the empty choice, `count - 1` the whole bag. */
  readonly count: number
  /** Adding this to the number of a choice adds one pack of the kind. */
  readonly unit: readonly number[]
  /** How many packs of each kind, by number. */
  readonly of: readonly (readonly number[])[]
  /** How many packs, by number. */
  readonly size: readonly number[]
  /** The numbers of all parts of a choice, itself and the empty one too. */
  partsOf(choice: number): Int32Array
}

/** How many pairs of a choice and a part of it there are: the work of going through all splits. */
export function splitCount(counts: readonly number[]): number {
  return counts.reduce((product, count) => (product * (count + 1) * (count + 2)) / 2, 1)
}

export function multisetsOf(counts: readonly number[]): Multisets {
  const unit: number[] = []
  let count = 1
  for (const available of counts) {
    unit.push(count)
    count *= available + 1
  }
  const of = Array.from({ length: count }, (_, choice) =>
    counts.map((available, kind) => Math.floor(choice / (unit[kind] as number)) % (available + 1)),
  )
  const parts = of.map(taken => Int32Array.from(partsWithin(taken, unit)))
  return { count, unit, of, size: of.map(sumOf), partsOf: choice => parts[choice] as Int32Array }
}

function partsWithin(taken: readonly number[], unit: readonly number[]): number[] {
  return taken.reduce<number[]>(
    (parts, packs, kind) =>
      Array.from({ length: packs + 1 }, (_, some) => some * (unit[kind] as number)).flatMap(added =>
        parts.map(part => part + added),
      ),
    [0],
  )
}
