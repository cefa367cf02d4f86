// The words of a refusal: what is wrong, and what to do instead.

import type { Limit } from '../charging/setting/limit.ts'
import type { Refusal } from '../charging/setting/refusal.ts'
import type { Show } from '../ground/show.ts'

export interface RefusalWords {
  /** "Do not charge" and why, in one sentence or two. */
  readonly headline: string
  readonly instead: string
}

/** Completes "more than the 2 A that …". */
export const whoLimits: Record<Limit['kind'], string> = {
  label: 'the label allows',
  chemistry: 'the cells take',
  house: 'the rules of this house allow',
  temperature: 'this temperature allows',
  condition: 'a pack in this state takes',
  charger: 'the charger gives',
  'charger power': "the charger's power allows",
  source: 'the source carries',
}

export function refusalWords(refusal: Refusal, show: Show): RefusalWords {
  const volts = show.perCell
  switch (refusal.kind) {
    case 'damaged cell':
      return {
        headline: `Do not charge this pack: ${volts(refusal.perCell_V)} per cell is below the damage threshold of ${volts(refusal.damage_V)}.`,
        instead: 'Retire it, and hand it in for recycling.',
      }
    case 'overcharged cell':
      return {
        headline: `Do not charge this pack: ${volts(refusal.perCell_V)} per cell is above full, ${volts(refusal.full_V)}.`,
        instead:
          'Check the chemistry, the cell count and the meter. If they are right, take the pack outdoors and keep away from it; do not fly it, and hand it in.',
      }
    case 'temperature':
      return {
        headline: `Do not charge at ${show.temperature(refusal.temperature_C)}: the cells must be between ${show.temperature(refusal.from_C)} and ${show.temperature(refusal.to_C)}.`,
        instead:
          refusal.temperature_C < refusal.from_C
            ? 'Warm the pack to room temperature first, slowly and without a heater on it.'
            : 'Let it cool in the shade until it feels no warmer than your hand, then ask again.',
      }
    case 'cutoff above full':
      return {
        headline: `Do not charge to ${volts(refusal.cutoffPerCell_V)} per cell: these cells are full at ${volts(refusal.full_V)}.`,
        instead: `Set ${volts(refusal.full_V)} per cell at most.`,
      }
    case 'cutoff too low':
      return {
        headline: `A cutoff of ${volts(refusal.cutoffPerCell_V)} per cell is below the floor of ${volts(refusal.least_V)} at which these cells count as flown out.`,
        instead: `Name a voltage per cell above ${volts(refusal.least_V)}, a percentage, storage or full.`,
      }
    case 'no fitting cutoff':
      return {
        headline: `Do not charge with this charger: none of its cutoffs (${refusal.cutoffs_V.map(volts).join(', ')}) fits ${volts(refusal.wanted_V)} per cell.`,
        instead: 'Use a charger that has a setting for this chemistry.',
      }
    case 'cell count':
      return {
        headline: `Do not charge ${refusal.series}S on this charger: it is made for ${cellRange(refusal.minSeries, refusal.maxSeries)}.`,
        instead: 'Use a charger for this cell count.',
      }
    case 'no balance lead':
      return {
        headline:
          'This charger starts only when it sees a balance lead, and a 1S pack without one has none to show.',
        instead: 'Use a 1S charger, or a pack of one cell that brings a balance plug.',
      }
    case 'steps too large':
      return tooLarge(refusal, show)
    case 'input window':
      return {
        headline: `This source cannot feed this charger: it gives ${range(refusal.gives_V, show)}, and the charger wants ${range([refusal.minInput_V, refusal.maxInput_V], show)}.`,
        instead: 'Use a source inside that range, or a charger that works from this one.',
      }
    case 'charged already': {
      const { target } = refusal
      const goal = target.kind === 'soc' ? show.percent(target.soc) : `${volts(target.perCell_V)} per cell`
      return {
        headline: `There is nothing to charge: the pack is at or above ${goal} already.`,
        instead: 'To bring it lower, fly it or discharge it.',
      }
    }
    case 'source at its floor':
      return {
        headline: `Do not use this source: at ${show.voltage(refusal.source_V)} it is at its floor of ${show.voltage(refusal.floor_V)} already.`,
        instead: 'Charge it first, or use another source.',
      }
  }
}

function tooLarge(refusal: Extract<Refusal, { kind: 'steps too large' }>, show: Show): RefusalWords {
  const { smallest_A, limit, smallestCapacity_Ah } = refusal
  const headline = `Do not charge this pack on this charger: its smallest step, ${show.current(smallest_A)}, is more than the ${show.current(limit.value_A)} that ${whoLimits[limit.kind]}.`
  if (smallestCapacity_Ah !== undefined) {
    const least_mAh = Math.ceil(smallestCapacity_Ah * 1000 - 1e-6)
    return {
      headline,
      instead: `This charger suits packs of this kind from ${show.capacity(least_mAh / 1000)} up; use one with a smaller step for this pack.`,
    }
  }
  return {
    headline,
    instead:
      limit.kind === 'source'
        ? 'Use a stronger source, or a charger with a smaller step.'
        : 'Use a charger with a smaller step or more power.',
  }
}

function cellRange(minSeries: number, maxSeries: number): string {
  if (!Number.isFinite(maxSeries)) return `${minSeries}S and up`
  return minSeries === maxSeries ? `${minSeries}S` : `${minSeries}S to ${maxSeries}S`
}

function range([low_V, high_V]: readonly [number, number], show: Show): string {
  if (!Number.isFinite(high_V)) return `${show.voltage(low_V)} and up`
  return low_V === high_V ? show.voltage(low_V) : `${show.voltage(low_V)} to ${show.voltage(high_V)}`
}
