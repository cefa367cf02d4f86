// What the charges noted of a pack say: its capacity and resistance over time, and whether it has aged.

import type { Pack } from '../things/pack.ts'
import {
  type CapacityOver,
  type Condition,
  capacitySigns,
  cellSigns,
  type ResistanceOver,
  resistanceSigns,
  type Sign,
} from './age-signs.ts'
import { type CapacityReading, type ChargeNote, capacityReading, resistanceReading } from './charge-note.ts'

/** So many at each end of the log make its start and its present: the middle one of them counts. */
const few = 3

export interface PackLog {
  /** In the order of the notes. */
  readonly readings: readonly { readonly capacity?: CapacityReading; readonly at25C_ohm?: number }[]
  /** Of the last few readings the middle one. */
  readonly capacity?: CapacityOver
  readonly resistance?: ResistanceOver
  /** Absent where nothing that was noted tells of the pack's age. */
  readonly condition: Condition | undefined
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
    return { capacity, at25C_ohm }
  })
  const capacity = capacityOver(readings.flatMap(reading => reading.capacity ?? []))
  const resistance = resistanceOver(readings.flatMap(reading => reading.at25C_ohm ?? []))
  const signs = [...capacitySigns(pack, capacity), ...resistanceSigns(pack, resistance), ...cellSigns(pack, notes)]
  const told = capacity || resistance || notes.some(({ cells_V }) => cells_V)
  return { readings, capacity, resistance, condition: told ? worst(signs) : undefined, signs }
}

function capacityOver(readings: readonly CapacityReading[]): CapacityOver | undefined {
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
    first_Ah: readings.length > few ? first[1] : undefined,
  }
}

function resistanceOver(readings: readonly number[]): ResistanceOver | undefined {
  if (readings.length === 0) return undefined
  const last = sorted(readings.slice(-few))
  const first = sorted(readings.slice(0, few))
  return { now_ohm: last[last.length >> 1] as number, first_ohm: readings.length > few ? first[1] : undefined }
}

const sorted = (values: readonly number[]): number[] => [...values].sort((a, b) => a - b)
const order: readonly Condition[] = ['healthy', 'ageing', 'retire']

/** The worse of conditions; healthy where there is no sign. */
const worst = (signs: readonly Sign[]): Condition =>
  order[Math.max(0, ...signs.map(({ condition }) => order.indexOf(condition)))] as Condition
