// Packs: `3S 720 LiHV`, `3S1P 720mAh lihv 65C 2C charge 6mΩ`, `2S2P 5200 Li-ion`; the parts in any order.

import type { Pack } from '../../charging/things/pack.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { present } from '../../ground/present.ts'
import { chemistryNames } from '../parts/chemistry.ts'
import * as texts from '../parts/pack.words.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import { type Part, readParts } from '../scan/parts.ts'
import type { Read } from '../scan/read.ts'
import { Scanner } from '../scan/scanner.ts'
import { batteryParts, type PackDraft, packParts, wantedPack } from './pack-parts.ts'

/**
 * Reads the whole text as one pack. The capacity is the whole pack's; the resistance is that of one cell position.
 * Throws a Problem where a word is not understood, out of range, or cells, capacity or chemistry are missing.
 */
export const readPack = (text: string): Read<Pack> => packOf(text, packParts)

/** The same of a battery that feeds a charger, up to 400 Ah. */
export const readBattery = (text: string): Read<Pack> => packOf(text, batteryParts)

function packOf(text: string, parts: readonly Part<PackDraft>[]): Read<Pack> {
  const scan = new Scanner(plainText(text))
  const draft: PackDraft = {}
  readParts(scan, parts, draft, wantedPack)
  const pack = finished(draft)
  if (pack) return pack
  const lacks = texts.lackedParts(chemistryNames)
  const needed = ['series', 'capacity_Ah', 'chemistry'] as const
  const missing = needed.filter(part => draft[part] === undefined).map(part => lacks[part])
  throw problemAt(scan.text, texts.packLacks(missing), wantedPack)
}

function finished(draft: PackDraft): Read<Pack> | undefined {
  const { bare, bareRate, bareDischarge, energy, ...parts } = draft
  const { series, parallel = 1, capacity_Ah, chemistry } = parts
  if (series === undefined || capacity_Ah === undefined || chemistry === undefined) return undefined
  const assumed = [
    bare !== undefined && texts.asMilliampHours(bare),
    bareRate !== undefined && texts.asLabelLimit(bareRate),
    bareDischarge !== undefined && texts.asDischargeRating(bareDischarge),
    energy !== undefined && texts.energyNotUsed(energy),
  ].filter(said => said !== false)
  return { value: { ...parts, chemistry, series, parallel, capacity_Ah }, assumed }
}

/** Canonical text; reading it gives the same pack. */
export const writePack = (pack: Pack): string => writePackParts({ ...pack, chemistry: pack.chemistry.name })

/** What may be told of a pack; the type of its cells by name. */
export type PackParts = Partial<Omit<Pack, 'chemistry'>> & { readonly chemistry?: string }

/** The parts of a pack that are told, in notation. */
export function writePackParts({ series, parallel = 1, chemistry, cellClass, ...figures }: PackParts): string {
  const { capacity_Ah, dischargeRate_C, labelRate_C, cellResistance_ohm } = figures
  return present([
    series === undefined ? undefined : `${series}S${parallel > 1 ? `${parallel}P` : ''}`,
    capacity_Ah === undefined ? undefined : writeQuantity(capacity_Ah, 'capacity'),
    chemistry,
    cellClass,
    dischargeRate_C === undefined ? undefined : `${writeQuantity(dischargeRate_C, 'rate')} discharge`,
    labelRate_C === undefined ? undefined : `${writeQuantity(labelRate_C, 'rate')} charge`,
    cellResistance_ohm === undefined ? undefined : writeQuantity(cellResistance_ohm, 'resistance'),
  ]).join(' ')
}
