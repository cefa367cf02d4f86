// Drawing values by chance from a seed: the same seed draws the same.

export interface Draw {
  /** Both ends included. */
  int(least: number, most: number): number
  pick<T>(list: readonly [T, ...T[]]): T
  shuffled<T>(list: readonly T[]): T[]
}

export function drawFrom(seed: number): Draw {
  const next = mulberry32(seed)
  const int = (least: number, most: number) => least + Math.floor(next() * (most - least + 1))
  return {
    int,
    pick: list => list[int(0, list.length - 1)] ?? list[0],
    shuffled: list => {
      const left = [...list]
      return list.map(() => left.splice(int(0, left.length - 1), 1)[0] as (typeof left)[number])
    },
  }
}

/** Mulberry32 by Tommy Ettinger, in the public domain: numbers from 0 to below 1. */
function mulberry32(seed: number): () => number {
  let state = seed
  return () => {
    state = (state + 0x6d2b79f5) | 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32
  }
}
