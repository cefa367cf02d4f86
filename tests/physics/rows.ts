// Charges by an electrochemical model of published cells (reference.py), as asked of the project's own model.

import { readFileSync } from 'node:fs'
import { type ChargeTimes, chargeTimeBand } from '../../src/charging/setting/band.ts'
import type { ChargeRequest } from '../../src/charging/simulation/charge.ts'
import { chemistryNamed } from '../../src/charging/things/chemistries.ts'
import type { ChargeNote } from '../../src/charging/upkeep/charge-note.ts'
import { learn } from '../../src/charging/upkeep/learn.ts'

export interface Row {
  readonly set: string
  readonly chemistry: string
  readonly model: 'SPMe' | 'DFN'
  /** Of the parameter set: for the rates only, as its window is another than a label's. */
  readonly nominal_Ah: number
  readonly capacity_Ah: number
  readonly reading_ohm: number
  readonly cutoff_V: number
  readonly rate_C: number
  /** Share of the charge at the start, rested at these volts. */
  readonly start: number
  readonly rest_V: number
  readonly cutoff_s: number
  readonly end_s: number
  readonly charge_Ah: number
}

export const rowsIn = (lines: string): readonly Row[] =>
  lines
    .trim()
    .split('\n')
    .map(line => JSON.parse(line) as Row)

/** As computed once; `npm run check:physics` computes them anew. */
export const storedRows: readonly Row[] = rowsIn(readFileSync(new URL('reference.jsonl', import.meta.url), 'utf8'))

/** The electrochemical model is another answer, not the truth: of the two the full one stands first. */
export type Knows = 'inputs' | 'resting volts' | 'its log'

export function requestOf(row: Row, knows: Knows): ChargeRequest {
  const chemistry = chemistryNamed(row.chemistry)
  if (!chemistry) throw new Error(`no chemistry ${row.chemistry}`)
  const pack = { chemistry, series: 1, parallel: 1, capacity_Ah: row.capacity_Ah }
  const isMeasured = knows === 'inputs'
  return {
    pack: isMeasured ? { ...pack, cellResistance_ohm: row.reading_ohm } : pack,
    ...(isMeasured && { measuredCapacity_Ah: row.capacity_Ah }),
    current_A: row.rate_C * row.nominal_Ah,
    from: knows === 'resting volts' ? { kind: 'rest', perCell_V: row.rest_V } : { kind: 'soc', soc: row.start },
    target: { kind: 'voltage', perCell_V: row.cutoff_V },
    termination_A: row.nominal_Ah / 10,
    temperature_C: 25,
  }
}

/** What a pilot would have noted of the charge. */
function noteOf(row: Row): ChargeNote {
  const { current_A, from, termination_A, temperature_C } = requestOf(row, 'its log')
  const to = { kind: 'rest', perCell_V: row.cutoff_V } as const
  const timed = { duration_s: row.end_s, timeToCutoff_s: row.cutoff_s }
  return { charge_Ah: row.charge_Ah, from, to, current_A, termination_A, temperature_C, ...timed }
}

/** The rate of the log that other charges of the set are told from. */
const loggedRate_C = 0.5

/** By what is known; `undefined` where that is a log of which the row itself is part. */
export function timesOf(row: Row, knows: Knows, rows: readonly Row[]): ChargeTimes | undefined {
  const request = requestOf(row, knows)
  if (knows !== 'its log') return chargeTimeBand(request)
  const before = rows.filter(one => one.set === row.set && one.model === 'SPMe' && one.rate_C === loggedRate_C)
  if (row.rate_C === loggedRate_C || before.length === 0) return undefined
  return chargeTimeBand({ ...request, learned: learn(request.pack, before.map(noteOf)) })
}
