// What the resistance of a pack's cells says about its age: measured or read, at 1 Ah and 25 °C, beside its like.

import { sumOf } from '../numbers/sum.ts'
import { resistanceFactor } from '../simulation/resistance.ts'
import { likelyClasses } from '../things/cell-class.ts'
import type { Band, Cited } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'
import type { Pack } from '../things/pack.ts'

/** A current out of the pack and its voltage then; a pack at rest is a load of 0 A. */
export interface LoadReading {
  readonly current_A: number
  readonly pack_V: number
}

/** Resistance of one cell from two loads a few seconds each, in ohm: the drop of volts over the rise of amps. */
export function resistanceFromLoads(one: LoadReading, other: LoadReading, series: number): number {
  return (one.pack_V - other.pack_V) / (other.current_A - one.current_A) / series
}

export interface HealthRequest {
  readonly pack: Pack
  /** One value for all, or one a cell, in ohm. */
  readonly cells_ohm: readonly number[]
  /** In °C; 25 when absent. */
  readonly temperature_C?: number
  /** What one cell had when the pack was new, in ohm, at 25 °C. */
  readonly fresh_ohm?: number
}

export type Age = 'as its like' | 'aged' | 'tired' | 'worn out'

/** Times the most of its like, or of itself when new. */
export const ages = practice<{ readonly aged: number; readonly tired: number; readonly worn: number }>(
  { aged: 1.5, tired: 2, worn: 3 },
  'a pack whose resistance has doubled is kept for gentle use, at three times it is retired',
)

/** What a reading of some seconds shows of two in three cells of each class that the pack may be of, in ohm·Ah. */
export function likeReadings({
  chemistry: { classes },
  cellClass,
}: Pick<Pack, 'chemistry' | 'cellClass'>): Cited<Band> {
  const ends = likelyClasses(classes.value, { cellClass }).map(({ atOnce_ohmAh: { middle, times } }) => ({
    low: middle / times,
    high: middle * times,
  }))
  const value = { low: Math.min(...ends.map(({ low }) => low)), high: Math.max(...ends.map(({ high }) => high)) }
  return { ...classes, value }
}

export const oddCell = practice(1.4, 'a cell with 1.4 times the resistance of the middle one ages ahead of the others')

/**
 * The mean of the cells as measured, at 25 °C, and there times the capacity: the same for packs of one make and any size.
 * That is set beside its like, or itself when new: `times` the most of that.
 */
export function judgeHealth({ pack, cells_ohm, temperature_C = 25, fresh_ohm }: HealthRequest) {
  const cell_ohm = meanOf(cells_ohm)
  const at25C_ohm = cell_ohm / resistanceFactor(temperature_C)
  const at25C_ohmAh = at25C_ohm * pack.capacity_Ah
  const like_ohmAh = fresh_ohm === undefined ? likeReadings(pack).value : ofItself(fresh_ohm * pack.capacity_Ah)
  const times = at25C_ohmAh / like_ohmAh.high
  return { age: ageAt(times), cell_ohm, at25C_ohm, at25C_ohmAh, like_ohmAh, times }
}

export type Health = ReturnType<typeof judgeHealth>

export const meanOf = (cells_ohm: readonly number[]): number => sumOf(cells_ohm) / cells_ohm.length

const ofItself = (fresh_ohmAh: number): Band => ({ low: fresh_ohmAh, high: fresh_ohmAh })

function ageAt(times: number): Age {
  const { aged, tired, worn } = ages.value
  if (times < aged) return 'as its like'
  if (times < tired) return 'aged'
  return times < worn ? 'tired' : 'worn out'
}

/**
 * The cell with the most, and how many times the middle one it has; `odd` is its place where it stands out. Undefined
 * where one was read for all.
 */
export function worstOf(cells_ohm: readonly number[]) {
  if (cells_ohm.length < 2) return undefined
  const sorted = cells_ohm.toSorted((a, b) => a - b)
  const middle = sorted[Math.floor((sorted.length - 1) / 2)] as number
  const ohm = Math.max(...cells_ohm)
  const times = ohm / middle
  return { ohm, times, odd: times > oddCell.value ? cells_ohm.indexOf(ohm) : undefined }
}
