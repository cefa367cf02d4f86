// Cells without a capacity, for what only volts decide: `3S LiPo`, or the chemistry alone.

import type { Chemistry } from '../../charging/things/chemistry.ts'
import { plainText } from '../../ground/plain-text.ts'
import { readChemistry } from '../parts/chemistry.ts'
import type { Read } from '../scan/read.ts'

export interface CellType {
  readonly chemistry: Chemistry
  /** 1 to 14; absent where only the chemistry was said. */
  readonly series?: number | undefined
}

const cellsInSeries = /(?:^|\s)(?<series>1[0-4]|[1-9]) ?-?(?:s|cells?)(?=\s|$)/i

/** Throws a Problem where the rest is no chemistry. */
export function readCellType(text: string): Read<CellType> {
  const plain = plainText(text)
  const { series } = cellsInSeries.exec(plain)?.groups ?? {}
  const chemistry = readChemistry(plain.replace(cellsInSeries, ' '))
  return { value: { chemistry, series: series === undefined ? undefined : Number(series) }, assumed: [] }
}

/** Canonical text; reading it gives the same cells. */
export const writeCellType = ({ chemistry, series }: CellType): string =>
  series === undefined ? chemistry.name : `${series}S ${chemistry.name}`
