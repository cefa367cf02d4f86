// What in a pack's log tells of its age: capacity and resistance beside its start and its like, and cells apart.

import type { Band } from '../things/chemistry.ts'
import { practice } from '../things/cited.ts'
import type { Pack } from '../things/pack.ts'
import { cellSpread, evenness, readingFault } from './cell-spread.ts'
import { type ChargeNote, endsFull } from './charge-note.ts'
import { type Age, judgeHealth, worstOf } from './health.ts'

export type Condition = 'healthy' | 'ageing' | 'retire'

/** Why a pack is not called healthy. */
export type Sign =
  | { readonly kind: 'below label'; readonly condition: Condition; readonly share: number }
  | { readonly kind: 'below itself'; readonly condition: Condition; readonly share: number }
  | {
      readonly kind: 'resistance'
      readonly condition: Condition
      readonly times: number
      readonly beside: 'its like' | 'itself'
    }
  /** Index from 0. */
  | { readonly kind: 'odd cell'; readonly condition: Condition; readonly cell: number; readonly times: number }
  | { readonly kind: 'spread'; readonly condition: Condition; readonly spread_V: number; readonly cell: number }

export const capacityLeft = practice<{ ageing: number; retire: number }>(
  { ageing: 0.9, retire: 0.8 },
  'a pack that holds less than 90 % of what it did has aged, under 80 % it is retired',
)

/** Capacity now, in Ah, with its band, and when the log began. */
export interface CapacityOver {
  readonly now_Ah: number
  readonly band_Ah: Band
  readonly first_Ah?: number
}

/** Resistance of a cell at 25 °C now, in ohm, and when the log began. */
export interface ResistanceOver {
  readonly now_ohm: number
  readonly first_ohm?: number
}

export function capacitySigns({ capacity_Ah }: Pack, capacity: CapacityOver | undefined): Sign[] {
  if (!capacity) return []
  const { now_Ah, band_Ah, first_Ah } = capacity
  const ofLabel = band_Ah.high / capacity_Ah
  const signs: Sign[] =
    ofLabel < capacityLeft.value.retire ? [{ kind: 'below label', condition: 'retire', share: ofLabel }] : []
  if (first_Ah === undefined) return signs
  const share = now_Ah / first_Ah
  const { ageing, retire } = capacityLeft.value
  if (share < ageing) {
    signs.push({ kind: 'below itself', condition: share < retire ? 'retire' : 'ageing', share })
  }
  return signs
}

const conditions: Record<Age, Condition> = {
  'as its like': 'healthy',
  aged: 'ageing',
  tired: 'ageing',
  'worn out': 'retire',
}

export function resistanceSigns(pack: Pack, resistance: ResistanceOver | undefined): Sign[] {
  if (!resistance) return []
  const { now_ohm, first_ohm } = resistance
  const signs: Sign[] = []
  const judge = (beside: 'its like' | 'itself', fresh_ohm?: number) => {
    const { age, times } = judgeHealth({ pack, cells_ohm: [now_ohm], fresh_ohm })
    const condition = conditions[age]
    if (condition !== 'healthy') signs.push({ kind: 'resistance', condition, times, beside })
  }
  judge('its like')
  if (first_ohm !== undefined) judge('itself', first_ohm)
  return signs
}

/** By the last note that names each cell. */
export function cellSigns(pack: Pack, notes: readonly ChargeNote[]): Sign[] {
  const signs: Sign[] = []
  const read = notes.findLast(({ cells_ohm }) => cells_ohm && cells_ohm.length > 1)
  const worst = read?.cells_ohm && worstOf(read.cells_ohm)
  if (worst?.odd !== undefined) {
    signs.push({ kind: 'odd cell', condition: 'ageing', cell: worst.odd, times: worst.times })
  }
  const measured = notes.findLast(({ cells_V }) => cells_V)
  const spread = measured && spreadAfter(pack, measured)
  if (spread) signs.push(spread)
  return signs
}

/** Undefined where the cells stand together at the end of the charge, or were not measured. */
function spreadAfter(pack: Pack, { cells_V, to }: ChargeNote): Sign | undefined {
  if (!cells_V) return undefined
  if (readingFault(pack, cells_V)) return undefined
  const { spread_V, lowest: cell } = cellSpread(cells_V)
  switch (evenness(spread_V, endsFull(pack, to) ? 'full' : 'rest')) {
    case 'apart':
      return { kind: 'spread', condition: 'ageing', spread_V, cell }
    case 'far apart':
      return { kind: 'spread', condition: 'retire', spread_V, cell }
    default:
      return undefined
  }
}
