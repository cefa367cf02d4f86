// A pack as people tell it, in parts and places of a sentence, made whole: what is missing is assumed and said, or asked for.

import type { Doubt } from '../../../charging/situation/doubts.ts'
import { chemistries, chemistryNamed, liIon } from '../../../charging/things/chemistries.ts'
import { present } from '../../../ground/present.ts'
import { attempt } from '../../../ground/problem.ts'
import type { Candidate, ToldPack } from '../../candidates/sentence/candidate.ts'
import { ofStrings_Ah } from '../../parts/pack-capacity.ts'
import { readCapacity } from '../../quantities/quantities.ts'
import { writeQuantity } from '../../quantities/quantity.ts'
import { readPack } from '../../things/pack.ts'
import { capacityFrom, cellsAssumed, chemistryAssumed, chemistryByVolts } from './assumed.words.ts'

export type PackTold = Readonly<ToldPack>

/** What a value tells of a pack, if anything: a pack in full or in part, or its type or its capacity alone. */
export function toldBy({ kind, pack, text }: Candidate): PackTold | undefined {
  if (pack) return pack
  if (kind === 'chemistry') return { chemistry: text }
  const capacity_Ah = kind === 'capacity' ? attempt(() => readCapacity(text)) : undefined
  return capacity_Ah === undefined ? undefined : { capacity_Ah }
}

/** Less is no mAh of a pack. */
const leastBare_mAh = 20

/** In Ah what a value tells that is no pack by its cells: so many mAh, also without the unit. */
export function capacityTold_Ah(value: Candidate): number | undefined {
  const bare_mAh = value.kind === 'number' || value.kind === 'count' ? Number(value.text) : 0
  if (bare_mAh >= leastBare_mAh) return bare_mAh / 1000
  return value.pack?.series === undefined ? toldBy(value)?.capacity_Ah : undefined
}

/** What a pack in notation tells. */
export function toldIn(text: string): PackTold | undefined {
  const pack = attempt(() => readPack(text).value)
  return pack && { ...pack, chemistry: pack.chemistry.name }
}

/** Parts told apart belong to one pack where they do not contradict each other. */
export const together = (told: readonly PackTold[]): PackTold => Object.assign({}, ...told.map(defined).toReversed())

const defined = (told: PackTold): PackTold =>
  Object.fromEntries(Object.entries(told).filter(([, value]) => value !== undefined))

/** Two packs and not one told in parts: both name the same part, with another value. */
export const contradict = (one: PackTold, other: PackTold): boolean =>
  (['series', 'capacity_Ah', 'chemistry'] as const).some(
    part => one[part] !== undefined && other[part] !== undefined && one[part] !== other[part],
  )

/** The commonest cells where none were told; a count that was not told is left open, with its doubt. */
export function wholePack(told: PackTold) {
  const named = told.chemistry === undefined ? undefined : chemistryNamed(told.chemistry)
  const likely = told.likely === undefined ? undefined : chemistryNamed(told.likely)
  const chemistry = named ?? likely ?? (told.isRound ? liIon : first)
  const doubts = present<Doubt>([
    named ? undefined : 'chemistryAssumed',
    told.series === undefined && told.capacity_Ah !== undefined ? 'cellsUnknown' : undefined,
  ])
  const { parallel = 1, ofCell } = told
  const capacity_Ah = told.capacity_Ah && ofCell ? ofStrings_Ah(told.capacity_Ah, parallel) : told.capacity_Ah
  const parts = present([
    `${told.series ?? 1}S${parallel > 1 ? `${parallel}P` : ''}`,
    capacity_Ah === undefined ? undefined : writeQuantity(capacity_Ah, 'capacity'),
    chemistry.name,
    told.cellClass,
    told.labelRate_C === undefined ? undefined : `${writeQuantity(told.labelRate_C, 'rate')} charge`,
    told.dischargeRate_C === undefined ? undefined : writeQuantity(told.dischargeRate_C, 'rate'),
    told.cellResistance_ohm === undefined ? undefined : writeQuantity(told.cellResistance_ohm, 'resistance'),
  ])
  return {
    /** In notation; absent where the capacity is missing. */
    text: told.capacity_Ah === undefined ? undefined : parts.join(' '),
    /** The cells alone, for what only volts decide: "3S LiPo", or the chemistry. */
    cells: told.series === undefined ? chemistry.name : `${told.series}S ${chemistry.name}`,
    chemistry: chemistry.name,
    assumed: present([
      told.label_Wh === undefined ? undefined : capacityFrom(told.label_Wh, told.capacity_Ah ?? 0),
      named ? undefined : likely ? chemistryByVolts(likely.name) : chemistryAssumed(chemistry.name),
      doubts.includes('cellsUnknown') ? cellsAssumed : undefined,
    ]),
    doubts,
  }
}

/** Told by its cells and its capacity. */
export const namesPack = ({ pack }: Candidate): boolean => pack?.capacity_Ah !== undefined && pack.series !== undefined

export type WholePack = ReturnType<typeof wholePack>

const [first] = chemistries as [(typeof chemistries)[number]]
/** The type that is taken where none is told. */
export const commonest = first.name
