// Values of a charge that its pack cannot have.

import { restingVoltage } from '../../src/charging/things/curve.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import type { State } from '../../src/charging/things/level.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { readingFault } from '../../src/charging/upkeep/cell-spread.ts'
import { type NoteAsked, noteOf } from './charge-note.ts'
import {
  cutoffAfterEnd,
  endsBelowStart,
  notFromFull,
  notInThatTime,
  notOfItsCells,
  slipOfPen,
  valuesForCells,
} from './problems.words.ts'

/** No pack takes back so much more than its label: it is a slip of the pen, or something is badly wrong. */
const mostOverLabel = 1.3

/** Throws a Problem for values that this pack cannot have. */
export function refuseSlips(asked: NoteAsked, pack: Pack, house: HouseLimits): void {
  const { cells, resistance, counted, to } = asked
  const put_Ah = asked['put-back']
  const most_Ah = mostOverLabel * pack.capacity_Ah
  if (put_Ah > most_Ah + 1e-9) throw slipOfPen(put_Ah, most_Ah, pack)
  const endsFull = !to || (to.kind === 'named' && to.name === 'full')
  if (counted !== undefined && !endsFull) throw notFromFull(to)
  refuseImpossibleTimes(asked)
  const note = noteOf(asked, pack, house)
  if (to && note.from && isAbove(note.from, note.to, pack)) throw endsBelowStart(to)
  const fault = cells && readingFault(pack, cells)
  if (fault) throw notOfItsCells(fault, pack)
  if (resistance && resistance.length !== 1 && resistance.length !== pack.series) {
    throw valuesForCells('resistance', resistance.length, pack)
  }
}

/** So much more than current times time a charger may count, by what its clock and its ammeter are off. */
const meterTimes = 1.05

function refuseImpossibleTimes({ current, took, 'put-back': put_Ah, 'to-cutoff': cutoff_s }: NoteAsked): void {
  if (took !== undefined && cutoff_s !== undefined && cutoff_s > took) throw cutoffAfterEnd(cutoff_s, took)
  if (current === undefined || took === undefined) return
  const most_Ah = (current * took) / 3600
  if (put_Ah > most_Ah * meterTimes) throw notInThatTime(put_Ah, most_Ah)
}

function isAbove(from: State, to: State, { chemistry }: Pack): boolean {
  const volts = (state: State) => (state.kind === 'rest' ? state.perCell_V : restingVoltage(chemistry, state.soc))
  return volts(from) > volts(to)
}
