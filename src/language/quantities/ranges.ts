// Several quantities that share a unit: lists (`0.3/0.8/1.5/3A`) and ranges (`10-26V`).

import { problemAt, shortened } from '../../ground/plain-text.ts'
import { takeNumeral } from '../scan/number.ts'
import { backwards, listOrRange, listTooLong, smallerFirst } from '../scan/scan.words.ts'
import type { Scanner } from '../scan/scanner.ts'
import type { DimensionName } from './dimensions.ts'
import { hasUnit, type Narrower, quantityOf, takeUnit } from './quantity.ts'

const listSeparator = / ?\/ ?|, | (?:or|and) /iuy
const spacedSeparator = / ?\/ ?|, | (?:or|and) | /iuy
const rangeSeparator = / ?- ?| (?:to|up to) /iuy

/** Longer lists are no charger's; the limit also keeps the reading of a sentence linear. */
const mostListed = 40
const wantedList = { expected: listOrRange(mostListed), example: '0.1-10A by 0.1' }

interface Typed {
  readonly numeral: string
  readonly unit: string | undefined
}

/** At least one quantity, up to the last that has its unit; undefined, and not moved, where there is none. */
export function takeList(
  scan: Scanner,
  dimension: DimensionName,
  { narrower, spaced = false }: { narrower?: Narrower; spaced?: boolean } = {},
): number[] | undefined {
  return scan.attempt(() => {
    const typed: Typed[] = []
    let complete = 0
    let end = scan.at
    do {
      const numeral = takeNumeral(scan)
      if (numeral === undefined) break
      if (typed.length === mostListed) throw problemAt(numeral, listTooLong(mostListed), wantedList)
      const unit = takeUnit(scan, dimension)
      typed.push({ numeral, unit })
      if (unit === undefined) continue
      complete = typed.length
      end = scan.at
    } while (scan.take(spaced ? spacedSeparator : listSeparator))
    scan.at = end
    return inOneUnit(typed.slice(0, complete), dimension, narrower)
  })
}

/** Two ends of which the second has its unit; throws a Problem where the second is not the greater. */
export function takeRange(
  scan: Scanner,
  dimension: DimensionName,
  narrower?: Narrower,
): { from: number; to: number } | undefined {
  return scan.attempt(() => {
    const start = scan.at
    const low = takeNumeral(scan)
    if (low === undefined) return undefined
    const lowUnit = takeUnit(scan, dimension)
    if (!scan.take(rangeSeparator)) return undefined
    const high = takeNumeral(scan)
    if (high === undefined) return undefined
    const highUnit = takeUnit(scan, dimension)
    const ends = inOneUnit(
      [
        { numeral: low, unit: lowUnit },
        { numeral: high, unit: highUnit },
      ],
      dimension,
      narrower,
    )
    const [from, to] = ends ?? []
    if (from === undefined || to === undefined) return undefined
    if (from < to) return { from, to }
    const token = shortened(scan.text.slice(start, scan.at))
    throw problemAt(token, backwards, { expected: smallerFirst, example: `${high}-${low}${highUnit ?? ''}` })
  })
}

/** A unit holds for the numerals before it that have none. */
function inOneUnit(typed: readonly Typed[], dimension: DimensionName, narrower?: Narrower): number[] | undefined {
  const shared = typed.at(-1)?.unit
  if (shared === undefined || !hasUnit(dimension, shared)) return undefined
  return typed.map(({ numeral, unit = shared }) => quantityOf(numeral, unit, dimension, narrower))
}
