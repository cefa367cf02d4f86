// How many cells a pack has where nobody said so: by a reading of each cell, or by the volts of all of them together.

import { chemistries, chemistryNamed } from '../../../charging/things/chemistries.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import { mostSeries } from '../../parts/draft.ts'
import { highestCell_V } from '../../parts/level-words.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import type { PackTold } from './told-pack.ts'

/** As many as were read one by one; of resistances two may also be one that changed. */
export function cellsRead(values: readonly Candidate[], { options }: CommandWords): number | undefined {
  const takes = (kind: string) => options.some(option => option.kind === kind)
  const rows = values.filter(
    ({ kind }) =>
      (kind === 'cellVolts' && takes('cell volts')) || (kind === 'resistances' && takes('cell resistances')),
  )
  const [row] = rows
  const count = row?.text.match(/[\d.]+/g)?.length ?? 0
  return rows.length === 1 && count > (row?.kind === 'cellVolts' ? 1 : 2) && count <= mostSeries ? count : undefined
}

const packVolts = /^(\d+(?:\.\d+)?)V(?: pack)?$/
/** A pack may rest somewhat lower than it should be landed with, and a meter may read high. */
const [lower_V, higher_V] = [0.1, 0.05]
/** Where a charge has ended cells stand near full. */
const nearFull_V = 0.35

/** The counts of cells that the volts of the whole pack may be of; undefined where none were told. */
export function cellsByVolts(
  options: Readonly<Record<string, string | undefined>>,
  { options: taken }: CommandWords,
  { chemistry: name = '' }: PackTold,
): readonly number[] | undefined {
  const levels = taken.filter(({ kind }) => kind === 'from' || kind === 'to')
  const volts = levels.flatMap(option => {
    const value = Number(packVolts.exec(options[option.name] ?? '')?.[1] ?? 0)
    return value > highestCell_V ? [value] : []
  })
  if (volts.length === 0) return undefined
  const { restFloor_V, full_V } = chemistryNamed(name) ?? (chemistries[0] as (typeof chemistries)[number])
  const isEnded = options.shown !== undefined && options.measured !== undefined
  const least_V = isEnded ? full_V.value - nearFull_V : restFloor_V.value - lower_V
  const most_V = full_V.value + (isEnded ? nearFull_V / 2 : higher_V)
  return Array.from({ length: mostSeries }, (_, index) => index + 1).filter(cells =>
    volts.every(value => value / cells >= least_V && value / cells <= most_V),
  )
}
