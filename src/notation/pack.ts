// Packs: `3S 720 LiHV`, `3S1P 720mAh lihv 2C 6mΩ`, `2S2P 5200 Li-ion`; the parts in any order.

import { Problem } from '../assistant/problem.ts'
import type { ChemistryName } from '../charging/chemistry.ts'
import type { Pack } from '../charging/pack.ts'
import { chemistryNames, takeChemistry } from './chemistry.ts'
import { takeNumeral, type Wanted } from './number.ts'
import { once, type Part, readParts, takeParts } from './parts.ts'
import { quantityOf, takeQuantity, writeQuantity } from './quantity.ts'
import type { Read } from './read.ts'
import { Scanner } from './scanner.ts'
import { plainText, shortened } from './text.ts'

const wanted: Wanted = {
  expected: 'a pack: cells in series (1S to 14S), capacity and chemistry',
  example: '3S 720mAh LiHV',
}
const mostSeries = 14
const mostParallel = 8
/** A bare number from here on is mAh, the trade's habit; below it could be Ah as well. */
const leastBare_mAh = 20
/** Charge limits on labels seldom pass 5C, discharge ratings seldom stay below: common practice. */
const mostChargeRate_C = 5

interface Draft {
  series?: number
  parallel?: number
  capacity_Ah?: number
  chemistry?: ChemistryName
  labelRate_C?: number
  dischargeRate?: string
  cellResistance_ohm?: number
  /** The capacity's numeral where it stood without a unit. */
  bare?: string
}

const seriesWord = /(\d{1,6}) ?-?(?:s(?![\p{L}])|cells?(?![\p{L}\d]))/iuy
const parallelWord = /(\d{1,6}) ?p(?![\p{L}])/iuy

const cells: Part<Draft> = (scan, draft) => {
  if (draft.series !== undefined) return false
  const count = scan.take(seriesWord)
  if (!count) return false
  draft.series = counted(count, 'cells in series', mostSeries, 'S')
  return true
}

const strings: Part<Draft> = (scan, draft) => {
  if (draft.parallel !== undefined) return false
  const count = scan.take(parallelWord)
  if (!count) return false
  draft.parallel = counted(count, 'cells in parallel', mostParallel, 'P')
  return true
}

function counted([token = '', digits]: RegExpExecArray, what: string, most: number, letter: string): number {
  const count = Number(digits)
  if (count >= 1 && count <= most) return count
  throw new Problem({
    what: `I cannot work with that number of ${what}.`,
    token: shortened(token),
    expected: `1${letter} to ${most}${letter}`,
    example: wanted.example,
  })
}

/** `45C` and `75C discharge` are what a pack may give, not what it may take. */
const rates: Part<Draft> = (scan, draft) => {
  const start = scan.at
  const rate_C = scan.attempt(() => takeQuantity(scan, 'rate', { max: 300, phrase: 'a rate' }))
  if (rate_C === undefined) return false
  const token = scan.text.slice(start, scan.at)
  const use = scan.take(/ (charge|charging|discharge|burst|continuous)(?!\p{L})/iuy)?.[1]?.toLowerCase()
  const charging = use === 'charge' || use === 'charging' || (use === undefined && rate_C <= mostChargeRate_C)
  if (!charging) {
    draft.dischargeRate ??= token
    return true
  }
  if (draft.labelRate_C !== undefined) {
    scan.at = start
    return false
  }
  draft.labelRate_C = rate_C
  return true
}

/** A numeral with no unit: not the first of a list or range, nor a count before a whole pack (`6 3S 720 LiHV`). */
const takeBare = (scan: Scanner): string | undefined =>
  scan.attempt(() => {
    if (scan.take(/(?=\d+ \d+ ?s(?:\d+p)? \d+(?:[.,]\d+)?(?: ?m?ah)?(?: |$))/iuy)) return undefined
    const numeral = takeNumeral(scan)
    return numeral !== undefined && scan.take(/(?=[ ,;?!]|$)(?! ?[/-])/y) ? numeral : undefined
  })

const bareCapacity: Part<Draft> = (scan, draft) => {
  const numeral = draft.capacity_Ah === undefined ? takeBare(scan) : undefined
  if (numeral === undefined) return false
  draft.bare = numeral
  draft.capacity_Ah = bareCapacityOf(numeral)
  return true
}

/** Inside a sentence a small bare number is a capacity only behind the cells; elsewhere it counts something. */
const bareCapacityInSentence: Part<Draft> = (scan, draft) => {
  if (draft.capacity_Ah !== undefined) return false
  const numeral = scan.attempt(() => {
    const found = takeBare(scan)
    const fits =
      found !== undefined && (Number.parseFloat(found) >= leastBare_mAh || draft.series !== undefined)
    return fits ? found : undefined
  })
  if (numeral === undefined) return false
  draft.capacity_Ah = Number.NaN
  return true
}

function bareCapacityOf(numeral: string): number {
  const capacity_Ah = quantityOf(numeral, 'mAh', 'capacity', {
    min: 0,
    phrase: 'a capacity',
    example: '720mAh',
  })
  if (capacity_Ah * 1000 >= leastBare_mAh) return capacity_Ah
  throw new Problem({
    what: 'That capacity could be in mAh or in Ah.',
    token: shortened(numeral),
    expected: 'a capacity from 20 mAh to 60 Ah, with its unit',
    example: numeral.startsWith('-') || Number.parseFloat(numeral) === 0 ? '720mAh' : `${numeral}Ah`,
  })
}

const parts: readonly Part<Draft>[] = [
  cells,
  strings,
  once('capacity_Ah', scan => takeQuantity(scan, 'capacity')),
  once('cellResistance_ohm', scan =>
    takeQuantity(scan, 'resistance', { max: 1, phrase: 'a resistance per cell' }),
  ),
  rates,
  once('chemistry', takeChemistry),
]

/**
 * Reads the whole text as one pack. The capacity is the whole pack's; the resistance is that of one cell position.
 * Throws a Problem where a word is not understood, out of range, or cells, capacity or chemistry are missing.
 */
export function readPack(text: string): Read<Pack> {
  const scan = new Scanner(plainText(text))
  const draft: Draft = {}
  readParts(scan, [...parts, bareCapacity], draft, wanted)
  const pack = finished(draft)
  if (pack) return pack
  const missing = [
    draft.series === undefined && 'the cells in series (as 3S)',
    draft.capacity_Ah === undefined && 'the capacity (as 720mAh)',
    draft.chemistry === undefined && `the chemistry (${chemistryNames.join(', ')})`,
  ].filter(Boolean)
  throw new Problem({
    what: `That pack lacks ${missing.join(' and ')}.`,
    token: shortened(scan.text),
    ...wanted,
  })
}

/**
 * Moves past a pack that stands in a sentence, complete or not, to be read by `readPack`; false, and not moved,
 * where nothing but a pack would not do: at least two of cells, capacity and chemistry.
 */
export function takePack(scan: Scanner): boolean {
  const draft = scan.attempt(() => {
    const found: Draft = {}
    takeParts(scan, [...parts, bareCapacityInSentence], found)
    const { series, capacity_Ah, chemistry } = found
    return [series, capacity_Ah, chemistry].filter(part => part !== undefined).length >= 2 ? found : undefined
  })
  return draft !== undefined
}

function finished(draft: Draft): Read<Pack> | undefined {
  const { series, parallel = 1, capacity_Ah, chemistry, labelRate_C, cellResistance_ohm } = draft
  if (series === undefined || capacity_Ah === undefined || chemistry === undefined) return undefined
  const assumed = []
  if (draft.bare !== undefined) assumed.push(`${draft.bare} is read as mAh, as pilots write it`)
  if (draft.dischargeRate !== undefined) {
    assumed.push(`${draft.dischargeRate} is read as the discharge rating and not used for charging`)
  }
  const value: Pack = {
    chemistry,
    series,
    parallel,
    capacity_Ah,
    ...(labelRate_C !== undefined && { labelRate_C }),
    ...(cellResistance_ohm !== undefined && { cellResistance_ohm }),
  }
  return { value, assumed }
}

/** Canonical text; reading it gives the same pack. */
export function writePack(pack: Pack): string {
  const { series, parallel, capacity_Ah, chemistry, labelRate_C, cellResistance_ohm } = pack
  const words = [
    `${series}S${parallel > 1 ? `${parallel}P` : ''}`,
    writeQuantity(capacity_Ah, 'capacity'),
    chemistry,
  ]
  if (labelRate_C !== undefined) {
    words.push(`${writeQuantity(labelRate_C, 'rate')}${labelRate_C > mostChargeRate_C ? ' charge' : ''}`)
  }
  if (cellResistance_ohm !== undefined) words.push(writeQuantity(cellResistance_ohm, 'resistance'))
  return words.join(' ')
}
