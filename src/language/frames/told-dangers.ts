// Dangers that stay through a conversation: which pack each was told of, and what ends it.

import { type Danger, dangers } from '../../charging/situation/dangers.ts'
import type { Doubt } from '../../charging/situation/doubts.ts'
import { markOf, mayBeSame, type PackMark } from '../../charging/situation/kept.ts'
import { attempt } from '../../ground/problem.ts'
import { bestCover, candidatesOf } from '../candidates/index.ts'
import type { Corrections } from '../dangers/corrections.ts'
import type { ToldDanger } from '../dangers/index.ts'
import type { Meant } from '../reading/meant.ts'
import { toldBy } from '../reading/told/told-pack.ts'
import { readPack } from '../things/pack.ts'
import type { Frame } from './frame.ts'
import type { StayingDanger } from './staying.ts'

/** A pack as it is spoken of: by its names in the kit, and by what was told of it. */
export interface SpokenPack {
  readonly names: readonly string[]
  readonly of: PackMark
  /** Where it stands in the text. */
  readonly start?: number
}

/** A pack of the kit that a text names. */
export interface NamedPack {
  readonly name: string
  readonly notation: string
}

/** The packs that a text names; of those that are told in part, the fullest tells of the others. */
export function spokenPacks(text: string, named: readonly NamedPack[]): readonly SpokenPack[] {
  if (named.length > 0) {
    return named.map(({ name, notation }) => ({ names: [name], of: markIn(notation, []) ?? {} }))
  }
  const told = bestCover(candidatesOf(text)).flatMap(value => {
    const { series, capacity_Ah, chemistry } = toldBy(value) ?? {}
    const of = { series, capacity_Ah, chemistry }
    // A type alone tells of the pack that was spoken of.
    return (series ?? capacity_Ah) ? [{ names: [], of, start: value.start }] : []
  })
  const whole = told.filter(isWhole)
  return whole.length > 0 ? whole : told.slice(0, 1)
}

const markIn = (notation: string, doubts: readonly Doubt[]): PackMark | undefined => {
  const pack = attempt(() => readPack(notation).value)
  return pack && markOf(pack, doubts)
}

/** The pack that was last asked about; undefined where there was none. */
export function lastSpoken(frame: Frame | undefined): SpokenPack | undefined {
  const of = frame && markIn(frame.question.options.pack ?? '', frame.doubts)
  return frame && of && { names: frame.names, of }
}

/** What is noted of packs of the kit, as if it had just been told. */
export const noted = (
  named: readonly (NamedPack & { readonly note?: Danger | undefined })[],
): readonly StayingDanger[] =>
  named.flatMap(({ name, notation, note }) => {
    const of = markIn(notation, [])
    return note && of ? [{ danger: note, typed: `${name}: ${note}`, names: [name], of, doubted: false }] : []
  })

/** Those that were told of one of the names, or of a pack without one that may be it. */
export const namedBy = (kept: readonly StayingDanger[], names: readonly string[]): readonly StayingDanger[] =>
  kept.filter(one => isOf(one, names))

const isOf = (one: StayingDanger, names: readonly string[]): boolean =>
  names.length === 0 || one.names.length === 0 || one.names.some(name => names.includes(name))

/** What was told stays as it is, becomes a doubt, or ends. */
export function corrected(
  kept: readonly StayingDanger[],
  said: Corrections,
  spoken: readonly SpokenPack[],
  last: SpokenPack | undefined,
): readonly StayingDanger[] {
  const isAbout = (one: StayingDanger, pack: SpokenPack | undefined) =>
    pack !== undefined && isOf(one, pack.names) && mayBeSame(one.of, pack.of)
  const meant = said.otherPack || said.mistaken ? last : (spoken[0] ?? last)
  // Of a pack that nothing was told of there is nothing to correct.
  const about = kept.some(one => isAbout(one, meant)) ? meant : kept.at(-1)
  return kept.flatMap(one => {
    if (!isAbout(one, about)) return [one]
    const isOther =
      said.otherPack || (said.mistaken && spoken.length > 0 && !spoken.some(({ of }) => mayBeSame(one.of, of)))
    if (dangers[one.danger].stays !== 'lasts') return said.otherwise.has(one.danger) || isOther ? [] : [one]
    const isSound = said.foundSound || said.mistaken || (said.measured && ofVolts.has(one.danger))
    if (one.suspected && (isOther || isSound || said.otherwise.has(one.danger))) return []
    return [isOther || isSound ? { ...one, doubted: true } : one]
  })
}

/** What a meter can tell. */
const ofVolts: ReadonlySet<Danger> = new Set(['tooLow', 'revive', 'overfull', 'storedFull', 'cellsHurt'])

interface Telling {
  readonly spoken: readonly SpokenPack[]
  readonly last: SpokenPack | undefined
  readonly said: Corrections
  /** Whether leave is asked for what stands there. */
  isAsked(at: number): boolean
  /** No pack in particular is meant: "a puffed pack". */
  readonly isGeneral: boolean
}

/** What a text tells that stays, with the pack that it tells it of: the nearest that it names, or the last one. */
export function staying(
  told: readonly (Pick<ToldDanger, 'danger' | 'typed'> & { readonly start?: number })[],
  { spoken, last, said, isAsked, isGeneral }: Telling,
): readonly StayingDanger[] {
  const isUnnamed = spoken.length === 0 && said.otherPack
  return told.flatMap(({ danger, typed, start: at = 0 }): readonly StayingDanger[] => {
    const { stays } = dangers[danger]
    if (stays === 'once') return []
    if (stays === 'around') return [{ danger, typed, names: [], of: {}, doubted: isAsked(at) }]
    const isVague = stays === 'lasts' ? isGeneral && spoken.length === 0 : isAsked(at)
    const far = ({ start = at }: SpokenPack) => Math.abs(start - at)
    const nearest = Math.min(...spoken.map(far))
    // "One cell of it": told in part it may be of the last pack or of another.
    const isOfLast = !isUnnamed && !spoken.some(isWhole)
    const packs = [...spoken.filter(pack => far(pack) === nearest), ...(isOfLast && last ? [last] : [])]
    return (packs.length > 0 ? packs : [nobodys]).map(({ names, of }) => ({
      danger,
      typed,
      names,
      of: { ...of, ...ofSetting[danger] },
      doubted: isUnnamed || isVague,
    }))
  })
}

/** What is set wrong may stand in the text as if it were the pack's: "5S setting for a 4S". */
const ofSetting: Partial<Record<Danger, PackMark>> = {
  wrongCount: { series: undefined },
  wrongMode: { chemistry: undefined },
}

const isWhole = ({ names, of }: SpokenPack): boolean =>
  names.length > 0 || (of.series !== undefined && of.capacity_Ah !== undefined)
const nobodys: SpokenPack = { names: [], of: {} }

/** Each danger of a pack once, in the words in which it was told last; asking leave for it doubts nothing that was told. */
export function together(kept: readonly StayingDanger[], told: readonly StayingDanger[]): readonly StayingDanger[] {
  const keyOf = ({ danger, names, of }: StayingDanger) => JSON.stringify([danger, names, of])
  const byKey = new Map(kept.map(one => [keyOf(one), one]))
  for (const one of told) {
    const doubted = one.doubted && byKey.get(keyOf(one))?.doubted !== false
    byKey.set(keyOf(one), { ...one, doubted })
  }
  return [...byKey.values()].slice(-mostKept)
}

/** Of one conversation; nobody tells more of one pack after another in half an hour. */
const mostKept = 40

/** What was told before and stands, of a pack that may be the one that is asked about. */
export function standing(
  kept: readonly StayingDanger[],
  meant: Meant,
  frame: Frame | undefined,
): readonly StayingDanger[] {
  const told = meant.kind === 'asks back' ? meant.told : lastSpoken(frame)?.of
  return kept.filter(({ of, doubted }) => !doubted && mayBeSame(of, told ?? {}))
}
