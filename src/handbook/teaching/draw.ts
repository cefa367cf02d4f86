// Drawing by chance from a seed, the same from the same seed: numbers, packs as people have them, and the setting of one.

import { judge } from '../../charging/envelope/judge.ts'
import { type Setting, settingFor } from '../../charging/setting/setting.ts'
import { situationOf, type Told } from '../../charging/situation/situation.ts'
import { chemistries } from '../../charging/things/chemistries.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import type { HouseLimits } from '../../charging/things/house-limits.ts'
import type { Pack } from '../../charging/things/pack.ts'

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

const capacities_mAh = [450, 650, 850, 1000, 1300, 1500, 1800, 2200, 3000, 4000, 5000] as const
export const packOf = (parts: Pick<Pack, 'chemistry' | 'series' | 'capacity_Ah'>): Pack => ({ parallel: 1, ...parts })
export const drawnChemistry = (draw: Draw): Chemistry => draw.pick(chemistries)
export const drawnCapacity_Ah = (draw: Draw): number => draw.pick(capacities_mAh) / 1000
export const drawnPack = (draw: Draw, chemistry: Chemistry = drawnChemistry(draw)): Pack =>
  packOf({ chemistry, series: draw.int(2, 6), capacity_Ah: drawnCapacity_Ah(draw) })

/** The same judgement that an answer rests on: no lesson teaches what would be refused. */
export const judged = (told: Told, house: HouseLimits) => judge(situationOf(told, { house, dangers: [], doubts: [] }))

/** Undefined where a charge of it is refused. */
export function settingOf(told: Omit<Told, 'act'>, house: HouseLimits): Setting | undefined {
  const { permit } = judged({ ...told, act: 'charge' }, house)
  return permit && settingFor(permit)
}
