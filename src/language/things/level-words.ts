// The words for a state of charge, as typed: `3.7V`, `11.1V pack`, `20%`, `full`, `storage`, `empty`, and the bare `3.6`.

import { chemistries } from '../../charging/things/chemistries.ts'
import type { LevelName } from '../../charging/things/level.ts'
import { problemAt } from '../../ground/plain-text.ts'
import { quantityOf, takeQuantity } from '../quantities/quantity.ts'
import { takeNumeral } from '../scan/number.ts'
import type { Scanner } from '../scan/scanner.ts'
import { packOrAmps, packOrSupply, socPhrase } from './state.words.ts'

/** No cell of a known chemistry rests higher, also where it is overcharged a little. */
export const highestCell_V = Number((Math.max(...chemistries.map(({ full_V }) => full_V.value)) + 0.15).toFixed(2))

export type LevelWords =
  | { readonly kind: 'named'; readonly name: LevelName; readonly token: string }
  | { readonly kind: 'soc'; readonly soc: number; readonly token: string }
  | { readonly kind: 'volts'; readonly volts: number; readonly token: string; readonly of?: 'cell' | 'pack' }
  | { readonly kind: 'bare'; readonly volts: number; readonly token: string }

const names: readonly (readonly [LevelName, RegExp])[] = [
  ['full', /full(?:y charged)?(?!\p{L})/iuy],
  ['storage', /storage(?: (?:level|voltage|charge))?(?!\p{L})/iuy],
  ['empty', /(?:empty|flat|(?:just )?landed)(?!\p{L})/iuy],
]
const ofCell = / ?(?:per cell|a cell|each cell|\/ ?cell|each)(?!\p{L})/iuy
const ofPack = / ?(?:(?:for|of|in) the |whole )?(?:pack|total)(?!\p{L})/iuy
/** Volts with amps or watts behind them are a supply's. */
const supplyGoesOn = /(?=,? ?@? ?[\d.,]+ ?(?:m?a|k?w|amps?|watts?)(?!\p{L}))/iuy
const atAmps = /(?= at [\d.,]+ ?(?:m?a|amps?)(?!\p{L}))/iuy
const cellVolts = /^[234][.,]\d{1,3}$/

/** Undefined, and not moved, where no level stands. */
export function takeLevelWords(scan: Scanner): LevelWords | undefined {
  return scan.attempt(() => takeNamed(scan) ?? takeShare(scan) ?? takeVolts(scan) ?? takeBare(scan))
}

function takeNamed(scan: Scanner): LevelWords | undefined {
  const start = scan.at
  const name = names.find(([, pattern]) => scan.take(pattern))?.[0]
  return name && { kind: 'named', name, token: scan.text.slice(start, scan.at) }
}

function takeShare(scan: Scanner): LevelWords | undefined {
  const start = scan.at
  const soc = takeQuantity(scan, 'share', { phrase: socPhrase })
  return soc === undefined ? undefined : { kind: 'soc', soc, token: scan.text.slice(start, scan.at) }
}

function takeVolts(scan: Scanner): LevelWords | undefined {
  return scan.attempt(() => {
    const start = scan.at
    const volts = takeQuantity(scan, 'voltage')
    if (volts === undefined || scan.take(supplyGoesOn)) return undefined
    const token = scan.text.slice(start, scan.at)
    if (scan.take(ofCell)) return { kind: 'volts', volts, token, of: 'cell' }
    if (scan.take(ofPack)) return { kind: 'volts', volts, token, of: 'pack' }
    if (volts > highestCell_V && scan.take(atAmps))
      throw problemAt(token, packOrSupply, { expected: packOrAmps, example: `${token} pack` })
    return { kind: 'volts', volts, token }
  })
}

/** `3.6` can only be volts per cell; `4` or `20` could be a percentage too. */
function takeBare(scan: Scanner): LevelWords | undefined {
  const token = takeNumeral(scan)
  if (token === undefined || !cellVolts.test(token) || !scan.take(/(?=[ ,;?!]|$)/y)) return undefined
  return { kind: 'bare', volts: quantityOf(token, 'V', 'voltage'), token }
}
