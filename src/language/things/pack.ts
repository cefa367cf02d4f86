// Packs: `3S 720 LiHV`, `3S1P 720mAh lihv 65C 2C charge 6mΩ`, `2S2P 5200 Li-ion`; the parts in any order.

import { chemistryNamed } from '../../charging/things/chemistries.ts'
import type { Pack } from '../../charging/things/pack.ts'
import { plainText, problemAt } from '../../ground/plain-text.ts'
import { present } from '../../ground/present.ts'
import { chemistryNames } from '../parts/chemistry.ts'
import { type Draft, mostParallel, mostPrinted_C, mostSeries, wantedPack } from '../parts/draft.ts'
import * as texts from '../parts/pack.words.ts'
import { packCapacity_Ah } from '../parts/pack-capacity.ts'
import { packPart } from '../parts/pack-parts.ts'
import { type Grammar, type PartOf, readWhole } from '../parts/whole.ts'
import { type Narrower, writeQuantity } from '../quantities/quantity.ts'
import type { Read } from '../scan/read.ts'

/** Throws a Problem for more cells than any pack has. */
const part: PartOf<Draft> = (sentence, at, draft) => {
  const end = packPart(sentence, at, draft)
  if (end !== undefined) return end
  const word = sentence.word(at)
  if (/^cells?$/.test(word) || (word === '-' && sentence.glued(at) && sentence.glued(at + 1))) return at + 1
  const numeral = sentence.numerals[at]
  const unit = numeral && /^(?:(s|cells?)|p)$/.exec(sentence.word(numeral.after))
  if (!numeral || !unit) return undefined
  const [counted, most] = unit[1] ? (['series', mostSeries] as const) : (['parallel', mostParallel] as const)
  if (draft[counted] !== undefined || (numeral.value >= 1 && numeral.value <= most)) return undefined
  throw problemAt(sentence.typed(at, numeral.after + 1), texts.cellsOutOfRange(counted), {
    expected: texts.upToCells(most, unit[1] ? 'S' : 'P'),
    example: wantedPack.example,
  })
}

const grammar = (capacity: Narrower): Grammar<Draft> => ({
  part,
  figures: [
    ['capacity', capacity],
    ['resistance', { max: 1, phrase: texts.resistancePerCell }],
    ['energy'],
    ['rate', { max: mostPrinted_C, phrase: texts.aRate }],
  ],
  wanted: wantedPack,
})
const [packGrammar, batteryGrammar] = [
  grammar({ example: wantedPack.example }),
  grammar({ max: 400, example: '4S 100Ah LiFe' }),
]

/**
 * Reads the whole text as one pack. The capacity is the whole pack's; the resistance is that of one cell position.
 * Throws a Problem where a word is not understood, out of range, or cells, capacity or chemistry are missing.
 */
export const readPack = (text: string): Read<Pack> => packOf(text, packGrammar)

/** The same of a battery that feeds a charger, up to 400 Ah. */
export const readBattery = (text: string): Read<Pack> => packOf(text, batteryGrammar)

function packOf(text: string, of: Grammar<Draft>): Read<Pack> {
  const plain = plainText(text)
  const draft: Draft = { sure: 1, typed: {} }
  readWhole(plain, of, draft)
  const pack = finished(draft)
  if (pack) return pack
  const lacks = texts.lackedParts(chemistryNames)
  const needed = ['series', 'capacity_Ah', 'chemistry'] as const
  const missing = needed.filter(part => draft[part] === undefined).map(part => lacks[part])
  throw problemAt(plain, texts.packLacks(missing), wantedPack)
}

function finished(draft: Draft): Read<Pack> | undefined {
  const { typed, nominal, parallel = 1, cellClass, labelRate_C, dischargeRate_C, cellResistance_ohm } = draft
  const [series = nominal, capacity_Ah] = [draft.series, packCapacity_Ah(draft)]
  const chemistry = chemistryNamed(draft.chemistry ?? '')
  if (series === undefined || capacity_Ah === undefined || chemistry === undefined) return undefined
  const assumed = [
    typed.bare !== undefined && texts.asMilliampHours(typed.bare),
    typed.labelRate !== undefined && texts.asLabelLimit(typed.labelRate),
    typed.dischargeRate !== undefined && texts.asDischargeRating(typed.dischargeRate),
    typed.energy !== undefined && texts.energyNotUsed(typed.energy),
  ].filter(said => said !== false)
  const figures = { cellClass, labelRate_C, dischargeRate_C, cellResistance_ohm }
  return { value: { ...figures, chemistry, series, parallel, capacity_Ah }, assumed }
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
