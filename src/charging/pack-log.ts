// What the charges noted of a pack say: its capacity and resistance over time, and whether it has aged.

import { resistanceFactor } from './cell.ts'
import { checkCells } from './cell-check.ts'
import type { Band, State } from './charge.ts'
import { chemistries } from './chemistries.ts'
import type { Cited } from './chemistry.ts'
import { type Age, judgeHealth } from './health.ts'
import type { Pack } from './pack.ts'
import { chargeAtRest } from './rest-charge.ts'

/** One charge as a pilot notes it. */
export interface ChargeNote {
  /** Put back into the whole pack, in Ah. */
  readonly charge_Ah: number
  /** Before the charge, at rest; where unknown the charge tells nothing of the capacity. */
  readonly from?: State
  readonly to: State
  /** At the end of the charge, in the order of the balance plug, in V. */
  readonly cells_V?: readonly number[]
  /** One value for all cells, or one a cell, in ohm. */
  readonly cells_ohm?: readonly number[]
  /** When the resistance was read, in °C; 25 when absent. */
  readonly temperature_C?: number
}

/** Capacity worked out from one charge, in Ah, with what real cells may hold at those volts. */
export interface CapacityReading {
  readonly capacity_Ah: number
  readonly band_Ah: Band
  /** Share of the capacity that the charge moved, 0 to 1. */
  readonly share: number
}

/** A smaller share of the capacity says too little of the whole. */
export const leastShare: Cited = {
  value: 0.5,
  standing: 'common practice',
  source: 'a charge of less than half the capacity tells little of the whole',
}

/** What is left in doubt where the charge moved is known: as measured by a full cycle. */
const cycleSpread = 0.03

/** Undefined where the charge moved too small a share of the capacity, or its start is not known. */
export function capacityReading(
  pack: Pack,
  { charge_Ah, from, to }: ChargeNote,
): CapacityReading | undefined {
  if (!from) return undefined
  const start = chargeIn(pack, from)
  const end = chargeIn(pack, to)
  const share = end.soc - start.soc
  if (share < leastShare.value) return undefined
  const capacity_Ah = charge_Ah / share
  const least_Ah = charge_Ah / (end.band.high - start.band.low)
  const most_Ah = charge_Ah / (end.band.low - start.band.high)
  return {
    capacity_Ah,
    band_Ah: {
      low: Math.min(least_Ah, capacity_Ah * (1 - cycleSpread)),
      high: Math.max(most_Ah, capacity_Ah * (1 + cycleSpread)),
    },
    share,
  }
}

/** A charge that ended at the full voltage has filled the pack; volts below it are taken as resting ones. */
function chargeIn({ chemistry }: Pack, state: State): { soc: number; band: Band } {
  if (state.kind === 'soc') return { soc: state.soc, band: { low: state.soc, high: state.soc } }
  const known = chemistries[chemistry]
  if (state.perCell_V >= known.full_V.value) return { soc: 1, band: { low: 1, high: 1 } }
  return chargeAtRest(known, state.perCell_V)
}

/** Mean resistance of a cell at 25 °C, in ohm. */
export function resistanceReading({ cells_ohm, temperature_C = 25 }: ChargeNote): number | undefined {
  if (!cells_ohm || cells_ohm.length === 0) return undefined
  return cells_ohm.reduce((sum, ohm) => sum + ohm, 0) / cells_ohm.length / resistanceFactor(temperature_C)
}

/** Whether a charge went to the full voltage, or to the gentler one that a house may choose. */
export function endsFull({ chemistry }: Pack, to: State): boolean {
  const { full_V, gentleFull_V = full_V } = chemistries[chemistry]
  return to.kind === 'soc' ? to.soc === 1 : to.perCell_V >= gentleFull_V.value
}

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
  | { readonly kind: 'odd cell'; readonly condition: Condition; readonly cell: number }
  | {
      readonly kind: 'spread'
      readonly condition: Condition
      readonly spread_V: number
      readonly cell: number
    }

interface Shares {
  readonly ageing: number
  readonly retire: number
}

export const capacityLeft: Cited<Shares> = {
  value: { ageing: 0.9, retire: 0.8 },
  standing: 'common practice',
  source: 'a pack that holds less than 90 % of what it did has aged, under 80 % it is retired',
}

/** So many at each end of the log make its start and its present: the middle one of them counts. */
const few = 3

export interface PackLog {
  /** In the order of the notes. */
  readonly readings: readonly { readonly capacity?: CapacityReading; readonly at25C_ohm?: number }[]
  /** Of the last few readings the middle one, in Ah, and its band. */
  readonly capacity?: { readonly now_Ah: number; readonly band_Ah: Band; readonly first_Ah?: number }
  /** The same of the resistance of a cell at 25 °C, in ohm. */
  readonly resistance?: { readonly now_ohm: number; readonly first_ohm?: number }
  /** Absent where nothing that was noted tells of the pack's age. */
  readonly condition?: Condition
  readonly signs: readonly Sign[]
}

/**
 * `notes` in order of time. The label counts only where the readings, taken in its favour, are below the share at
 * which practice retires a pack, as new packs hold up to a seventh less than their label; ageing is judged beside
 * the start of the log, once there are more readings than make a start.
 */
export function judgeLog(pack: Pack, notes: readonly ChargeNote[]): PackLog {
  const readings = notes.map(note => {
    const capacity = capacityReading(pack, note)
    const at25C_ohm = resistanceReading(note)
    return { ...(capacity && { capacity }), ...(at25C_ohm !== undefined && { at25C_ohm }) }
  })
  const capacity = capacityOver(readings.flatMap(reading => reading.capacity ?? []))
  const resistance = resistanceOver(readings.flatMap(reading => reading.at25C_ohm ?? []))
  const signs = [
    ...capacitySigns(pack, capacity),
    ...resistanceSigns(pack, resistance),
    ...cellSigns(pack, notes),
  ]
  const told = capacity || resistance || notes.some(({ cells_V }) => cells_V)
  return {
    readings,
    ...(capacity && { capacity }),
    ...(resistance && { resistance }),
    ...(told && { condition: worst(signs) }),
    signs,
  }
}

function capacityOver(readings: readonly CapacityReading[]): PackLog['capacity'] {
  if (readings.length === 0) return undefined
  const last = readings.slice(-few)
  const lower = (of: (reading: CapacityReading) => number) => sorted(last.map(of))[(last.length - 1) >> 1]
  const first = sorted(readings.slice(0, few).map(({ capacity_Ah }) => capacity_Ah))
  return {
    now_Ah: lower(({ capacity_Ah }) => capacity_Ah) as number,
    band_Ah: {
      low: lower(({ band_Ah }) => band_Ah.low) as number,
      high: lower(({ band_Ah }) => band_Ah.high) as number,
    },
    ...(readings.length > few && { first_Ah: first[1] as number }),
  }
}

function resistanceOver(readings: readonly number[]): PackLog['resistance'] {
  if (readings.length === 0) return undefined
  const last = sorted(readings.slice(-few))
  const first = sorted(readings.slice(0, few))
  return {
    now_ohm: last[last.length >> 1] as number,
    ...(readings.length > few && { first_ohm: first[1] as number }),
  }
}

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b)

function capacitySigns({ capacity_Ah }: Pack, capacity: PackLog['capacity']): Sign[] {
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

function resistanceSigns(pack: Pack, resistance: PackLog['resistance']): Sign[] {
  if (!resistance) return []
  const { now_ohm, first_ohm } = resistance
  const signs: Sign[] = []
  const judge = (beside: 'its like' | 'itself', fresh_ohm?: number) => {
    const { age, times } = judgeHealth({
      pack,
      cells_ohm: [now_ohm],
      ...(fresh_ohm !== undefined && { fresh_ohm }),
    })
    const condition = conditions[age]
    if (condition !== 'healthy') signs.push({ kind: 'resistance', condition, times, beside })
  }
  judge('its like')
  if (first_ohm !== undefined) judge('itself', first_ohm)
  return signs
}

/** By the last note that names each cell. */
function cellSigns(pack: Pack, notes: readonly ChargeNote[]): Sign[] {
  const signs: Sign[] = []
  const read = notes.findLast(({ cells_ohm }) => cells_ohm && cells_ohm.length > 1)
  const odd = read?.cells_ohm && judgeHealth({ pack, cells_ohm: read.cells_ohm }).odd
  if (odd !== undefined) signs.push({ kind: 'odd cell', condition: 'ageing', cell: odd })
  const measured = notes.findLast(({ cells_V }) => cells_V)
  const spread = measured && spreadAfter(pack, measured)
  if (spread) signs.push(spread)
  return signs
}

/** Undefined where the cells stand together at the end of the charge, or were not measured. */
export function spreadAfter(pack: Pack, { cells_V, to }: ChargeNote): Sign | undefined {
  if (!cells_V) return undefined
  const check = checkCells({ pack, cells_V, at: endsFull(pack, to) ? 'full' : 'rest', balance_A: 1 })
  const found = check.findings.find(({ kind }) => kind === 'spread')
  if (found?.kind !== 'spread') return undefined
  const { spread_V, lowest: cell } = check
  if (found.judged === 'weak cell') return { kind: 'spread', condition: 'ageing', spread_V, cell }
  return found.judged === 'do not charge'
    ? { kind: 'spread', condition: 'retire', spread_V, cell }
    : undefined
}

const order: readonly Condition[] = ['healthy', 'ageing', 'retire']

/** The worse of conditions; healthy where there is no sign. */
const worst = (signs: readonly Sign[]): Condition =>
  order[Math.max(0, ...signs.map(({ condition }) => order.indexOf(condition)))] as Condition
