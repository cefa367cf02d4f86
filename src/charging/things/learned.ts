// What a pack's own charges have told of its cells.

import type { Pack } from './pack.ts'

/** What is learned of one cell, at 25 °C; its resistance for 1 Ah. */
export interface Traits {
  /** Of the label, what it holds. */
  readonly share: number
  readonly atOnce_ohmAh: number
  readonly diffusion_h: number
}

/** The traits of each of the cells that a pack may be made of, after what was noted of it. */
export interface Learned {
  readonly pack: Pack
  /** In the order of the design. */
  readonly traits: readonly Traits[]
  /** Charges that told something, and the rates they were charged at, in C. */
  readonly charges: number
  readonly rates_C: readonly number[]
  /** Indices of notes that do not go with the others, and taught nothing. */
  readonly odd: readonly number[]
}

/** Whether two labels may be of one pack; what else stands on a label may be added later. */
export const isAlike = (one: Pack, other: Pack): boolean =>
  one.chemistry.name === other.chemistry.name &&
  one.series === other.series &&
  one.parallel === other.parallel &&
  one.capacity_Ah === other.capacity_Ah

/** What is learned of a pack with such a label. */
export const learnedOf = (all: readonly Learned[] | undefined, pack: Pack): Learned | undefined =>
  all?.find(one => isAlike(one.pack, pack))
