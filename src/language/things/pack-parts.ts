// The parts that a pack is written in.

import type { CellClassName } from '../../charging/things/cell-class.ts'
import type { Chemistry } from '../../charging/things/chemistry.ts'
import { problemAt } from '../../ground/plain-text.ts'
import type { Wanted } from '../../ground/problem.ts'
import { takeChemistry } from '../parts/chemistry.ts'
import { leastDischargeRate_C, mostParallel, mostPrinted_C, mostSeries } from '../parts/draft.ts'
import type { CellsCounted } from '../parts/pack.words.ts'
import * as texts from '../parts/pack.words.ts'
import { type Narrower, quantityOf, takeQuantity } from '../quantities/quantity.ts'
import { decimalText, takeNumeral } from '../scan/number.ts'
import { once, type Part } from '../scan/parts.ts'
import type { Scanner } from '../scan/scanner.ts'

export const wantedPack: Wanted = { expected: texts.aPack, example: '3S 720mAh LiHV' }
/** A bare number from here on is mAh, the trade's habit; below it could be Ah as well. */
const leastBare_mAh = 20

export interface PackDraft {
  series?: number
  parallel?: number
  capacity_Ah?: number
  chemistry?: Chemistry
  labelRate_C?: number
  dischargeRate_C?: number
  cellClass?: CellClassName
  /** A discharge rating that was not said to be one. */
  bareDischarge?: string
  /** A charge limit that was not said to be one. */
  bareRate?: string
  energy?: string
  cellResistance_ohm?: number
  /** The capacity's numeral where it stood without a unit. */
  bare?: string
}

const seriesWord = /(\d{1,6}) ?-?(?:s(?!\p{L})|cells?(?![\p{L}\d]))(?:-(?=\d))?/iuy
const parallelWord = /(\d{1,6}) ?p(?![\p{L}])/iuy

const cells: Part<PackDraft> = (scan, draft) => {
  if (draft.series !== undefined) return false
  const count = scan.take(seriesWord)
  if (!count) return false
  draft.series = counted(count, 'series', mostSeries, 'S')
  return true
}

const strings: Part<PackDraft> = (scan, draft) => {
  if (draft.parallel !== undefined) return false
  const count = scan.take(parallelWord)
  if (!count) return false
  draft.parallel = counted(count, 'parallel', mostParallel, 'P')
  return true
}

function counted([token = '', digits]: RegExpExecArray, what: CellsCounted, most: number, letter: 'S' | 'P'): number {
  const count = Number(digits)
  if (count >= 1 && count <= most) return count
  throw problemAt(token, texts.cellsOutOfRange(what), {
    expected: texts.upToCells(most, letter),
    example: wantedPack.example,
  })
}

/** `45C` and `75C discharge` are what a pack may give, not what it may take. */
const rates: Part<PackDraft> = (scan, draft) => {
  const start = scan.at
  const rate_C = scan.attempt(() => takeQuantity(scan, 'rate', { max: mostPrinted_C, phrase: texts.aRate }))
  if (rate_C === undefined) return false
  const token = scan.text.slice(start, scan.at)
  const use = scan.take(/ (charge|charging|discharge|burst|continuous)(?!\p{L})/iuy)?.[1]?.toLowerCase()
  const charging = use === 'charge' || use === 'charging' || (use === undefined && rate_C < leastDischargeRate_C)
  if (!charging) {
    if (draft.dischargeRate_C === undefined && use === undefined) draft.bareDischarge = token
    draft.dischargeRate_C ??= rate_C
    return true
  }
  if (draft.labelRate_C !== undefined) {
    scan.at = start
    return false
  }
  draft.labelRate_C = rate_C
  if (use === undefined) draft.bareRate = token
  return true
}

/** A numeral with no unit: not the first of a list or range, nor a count before a whole pack (`6 3S 720 LiHV`). */
const takeBare = (scan: Scanner): string | undefined =>
  scan.attempt(() => {
    if (scan.take(/(?=\d+ \d+ ?s(?:\d+p)? \d+(?:[.,]\d+)?(?: ?m?ah)?(?: |$))/iuy)) return undefined
    const numeral = takeNumeral(scan)
    return numeral !== undefined && scan.take(/(?=[ ,;?!]|$)(?! ?[/-])/y) ? numeral : undefined
  })

const bareCapacity: Part<PackDraft> = (scan, draft) => {
  const numeral = draft.capacity_Ah === undefined ? takeBare(scan) : undefined
  if (numeral === undefined) return false
  draft.bare = numeral
  draft.capacity_Ah = bareCapacityOf(numeral)
  return true
}

const asked: Wanted = { expected: texts.capacityWithUnit, example: wantedPack.example }

function bareCapacityOf(numeral: string): number {
  const size = Number(decimalText(numeral, asked))
  if (size <= 0 || size >= leastBare_mAh) return quantityOf(numeral, 'mAh', 'capacity', { example: wantedPack.example })
  throw problemAt(numeral, texts.mAhOrAh, asked)
}

/** Labels often say the watt-hours too; they follow from cells and capacity. */
const energy = (scan: Scanner): string | undefined => {
  const start = scan.at
  return takeQuantity(scan, 'energy') === undefined ? undefined : scan.text.slice(start, scan.at)
}

const capacity = (narrower: Narrower) =>
  once<PackDraft, 'capacity_Ah'>('capacity_Ah', scan => takeQuantity(scan, 'capacity', narrower))

/** `high drain`, `energy cells`: what its cells are made for. */
const cellClass = (scan: Scanner): CellClassName | undefined => {
  const found = scan.take(/(high[ -]drain|energy)(?: cells?)?(?![\p{L}\d])/iuy)?.[1]
  if (found === undefined) return undefined
  return /^e/i.test(found) ? 'energy' : 'high drain'
}

const statedParts: readonly Part<PackDraft>[] = [
  cells,
  strings,
  capacity({ example: wantedPack.example }),
  once('cellResistance_ohm', scan => takeQuantity(scan, 'resistance', { max: 1, phrase: texts.resistancePerCell })),
  once('energy', energy),
  rates,
  once('chemistry', takeChemistry),
  once('cellClass', cellClass),
]

export const packParts: readonly Part<PackDraft>[] = [...statedParts, bareCapacity]

/** Batteries that feed others are larger than any that flies. */
export const batteryParts: readonly Part<PackDraft>[] = [capacity({ max: 400, example: '4S 100Ah LiFe' }), ...packParts]
