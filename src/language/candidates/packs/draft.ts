// A pack as far as its parts were read.

import type { ToldPack } from '../sentence/candidate.ts'
import type { Measure } from '../sentence/measures.ts'
import type { Sentence } from '../sentence/sentence.ts'

/** The draft of a pack, and how surely its parts are some. */
export interface Draft extends ToldPack {
  /** Label energy and volts add nothing beside cells and capacity, but they belong to the pack. */
  energy?: true
  nominal?: number
  /** Most that one round cell of its size holds, in Ah. */
  format?: number
  bare?: true
  sure: number
  /** How surely its cells are those of a pack, where nothing else says so. */
  cellsSure?: number
}

/** Reads the part at this token into the draft and gives the token behind it; undefined where none stands. */
export type DraftPart = (sentence: Sentence, at: number, draft: Draft) => number | undefined

export const measured = (sentence: Sentence, at: number, dimension: Measure['dimension']): Measure | undefined =>
  sentence.measures[at]?.find(measure => measure.dimension === dimension)
