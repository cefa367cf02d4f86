// A pack as far as its parts were read.

import type { Wanted } from '../../ground/problem.ts'
import type { ToldPack } from '../candidates/sentence/candidate.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import type { Measure } from '../quantities/measures.ts'
import { aPack } from './pack.words.ts'

export const wantedPack: Wanted = { expected: aPack, example: '3S 720mAh LiHV' }
/** Cells in series of the longest pack that is read. */
export const mostSeries = 14
export const mostParallel = 8
/** Charge limits on labels seldom reach 5C, discharge ratings seldom stay below: common practice. */
export const leastDischargeRate_C = 5
/** Nobody charges so fast: what a pack may give, also apart from its other parts. */
export const leastPlain_C = 15
/** Above this no label goes, not even for a burst: what is read so far is for the envelope to question. */
export const mostPrinted_C = 300

/** The draft of a pack, and how surely its parts are some. */
export interface Draft extends ToldPack {
  /** Label volts add nothing beside cells and capacity, but they belong to the pack. */
  nominal?: number
  /** Most that one round cell of its size holds, in Ah. */
  format?: number
  sure: number
  /** How surely its cells are those of a pack, where nothing else says so. */
  cellsSure?: number
  /** As typed: a capacity without a unit, rates that were not said to be what they are taken for, and watt-hours, which follow. */
  typed: { bare?: string; dischargeRate?: string; labelRate?: string; energy?: string }
}

export const measured = (sentence: Sentence, at: number, dimension: Measure['dimension']): Measure | undefined =>
  sentence.measures[at]?.find(measure => measure.dimension === dimension)
