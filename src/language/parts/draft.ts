// A pack as far as its parts were read.

import type { ToldPack } from '../candidates/sentence/candidate.ts'
import type { Measure } from '../candidates/sentence/measures.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'

/** Cells in series of the longest pack that is read. */
export const mostSeries = 14
export const mostParallel = 8
/** Charge limits on labels seldom reach 5C, discharge ratings seldom stay below: common practice. */
export const leastDischargeRate_C = 5
/** Above this no label goes, not even for a burst: what is read so far is for the envelope to question. */
export const mostPrinted_C = 300

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
