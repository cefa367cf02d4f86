// Values of a charge that its pack cannot have.

import type { Pack } from '../../src/charging/things/pack.ts'
import { readingFault } from '../../src/charging/upkeep/cell-spread.ts'
import type { NoteAsked } from './charge-note.ts'
import { notFromFull, notOfItsCells, slipOfPen, valuesForCells } from './problems.words.ts'

/** No pack takes back so much more than its label: it is a slip of the pen, or something is badly wrong. */
const mostOverLabel = 1.25

/** Throws a Problem for values that this pack cannot have. */
export function refuseSlips(asked: NoteAsked, pack: Pack): void {
  const { cells, resistance, counted, to } = asked
  const put_Ah = asked['put-back']
  const most_Ah = mostOverLabel * pack.capacity_Ah
  if (put_Ah > most_Ah + 1e-9) throw slipOfPen(put_Ah, most_Ah, pack)
  const endsFull = !to || (to.kind === 'named' && to.name === 'full')
  if (counted !== undefined && !endsFull) throw notFromFull(to)
  const fault = cells && readingFault(pack, cells)
  if (fault) throw notOfItsCells(fault, pack)
  if (resistance && resistance.length !== 1 && resistance.length !== pack.series) {
    throw valuesForCells('resistance', resistance.length, pack)
  }
}
