// Several packs of a sentence as the list that one detail takes: "4x 6S 5000mAh LiPo; 2S 450mAh LiPo at 3.8V".

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { highestCell_V } from '../parts/level-words.ts'
import type { CommandWords, OptionWords } from '../sentence/vocabulary.ts'
import { deal, type ToldLevel, type ToldPacks } from './dealt.ts'
import type { KeptPacks } from './kept-list.ts'
import { isToldGoal } from './told/slots.ts'
import { type PackTold, together, toldBy, type WholePack, wholePack } from './told/told-pack.ts'

export interface Listed extends Pick<WholePack, 'assumed' | 'doubts'> {
  readonly option: string
  readonly text: string
  readonly used: ReadonlySet<Candidate>
}

const listKinds: ReadonlySet<string> = new Set(['packs', 'session packs'])
/** What such words count is no pack, but what packs hang on. */
const device =
  /^(?:chargers?|boards?|outputs?|outlets?|ports?|channels?|slots?|sides?|sources?|suppl(?:y|ies)|pilots?|people|heats?|rounds?|hours?|dual|double)$/
/** What says behind a pack that it was counted: "4S 1500, two of them". */
const ofThem = /^(?:of|pieces?|pcs?|packs?|nos|total|altogether)$/

interface Told {
  readonly pack: PackTold
  count: number | undefined
  mass?: string
  readonly levels: ToldLevel[]
  /** What it is to be charged with, in notation. */
  current?: string | undefined
}

/** The packs, each with its count, its mass or where it stands; undefined where the command lists none. `kept` stands where none is named. */
export function listed(
  values: readonly Candidate[],
  { options }: CommandWords,
  kept: KeptPacks | undefined,
): Listed | undefined {
  const list = options.find(({ kind }) => listKinds.has(kind))
  const kinds = new Set(values.filter(namesPack).map(({ text }) => text))
  if (!list || (kinds.size < 2 && options.some(({ kind }) => kind === 'pack'))) return undefined
  const used = new Set<Candidate>()
  const told: Told[] = []
  let counted: number | undefined
  let further: number | undefined
  let ofAll: string | undefined
  const setsEach = list.kind === 'session packs' && !options.some(({ name }) => name === 'places')
  const early: ToldLevel[] = []
  const begin = (pack: PackTold) => {
    told.push({ pack, count: pack.count ?? counted, levels: early.splice(0) })
    counted = undefined
  }
  for (const value of values) {
    if (value.kind === 'count' && value.next === 'boards') continue
    const isPack = namesPack(value)
    if (isPack) begin(value.pack)
    else if (value.kind === 'count' && value.next === 'more' && kept?.count) further = Number(value.text)
    else if (value.kind === 'count') {
      const last = told.at(-1)
      if (last && last.count === undefined && countsBehind(value, told.length)) last.count = Number(value.text)
      // "Only three, one is lent out": what one of them does.
      else if (!device.test(value.next ?? '') && (value.text !== '1' || counted === undefined))
        counted = Number(value.text)
    } else if (setsEach && isToBeSet(value)) {
      const last = told.at(-1)
      if (last && !value.each) last.current ??= value.text
      else ofAll ??= value.text
    } else {
      const last = told.at(-1)
      const levels = levelsOf(value, list, last)
      const weighs = value.kind === 'mass' && list.kind === 'packs' && last?.mass === undefined
      if (levels.length === 0 && !(weighs && last)) continue
      // "One 3S 1300 at 11.42 and four at 11.38": so many more of the same.
      const isMore = last?.count === 1 && last.levels.length > 0 && (counted ?? 0) > 1 && value.holders === counted
      if (isMore) begin({ ...last.pack, count: counted })
      if (weighs && last) last.mass = value.text
      else if (isMore) told.at(-1)?.levels.push(...levels)
      else (last?.levels ?? early).push(...levels)
    }
    used.add(value)
  }
  // "Two packs on one board, one at … and one at …": the count of those that are listed.
  const [head, ...others] = told
  if (
    head &&
    others.length > 0 &&
    head.count === told.length &&
    head.pack.count === undefined &&
    others.every(({ count }) => count === undefined)
  )
    head.count = undefined
  const saysWhere = early.length > 0
  // "Six of them at 3.8": the pack of the question before.
  const isAnew =
    kept?.count === undefined ||
    counted !== undefined ||
    further !== undefined ||
    early.length > 0 ||
    ofAll !== undefined
  if (told.length === 0 && kept && isAnew) {
    // "Two are at 3.7 and the rest at 3.8": so many of those that were spoken of.
    if (counted !== kept.count && early.some(({ holders }) => holders === counted || holders === 'rest'))
      counted = kept.count
    if (early.length === 0 && kept.level !== undefined) early.push({ text: kept.level, holders: 'all' })
    counted ??= kept.count
    ofAll ??= kept.current
    begin(kept.pack)
  }
  // "Two more, at 3.74": those that were spoken of stay, and so many join them.
  if (told.length === 1 && kept && further !== undefined) {
    begin(kept.pack)
    const [, joining] = told
    if (joining) joining.count = further
    // Where they stand is not said by where the others do.
    if (saysWhere) {
      joining?.levels.push(...(told[0]?.levels.splice(0) ?? []))
      if (kept.level !== undefined) told[0]?.levels.push({ text: kept.level, holders: 'all' })
    }
  }
  // Behind the last pack it is for all of which nothing else was said.
  ofAll ??= told.slice(0, -1).every(({ current }) => current === undefined) ? told.at(-1)?.current : undefined
  for (const one of told) one.current ??= ofAll
  return told.length === 0 ? undefined : writtenList(list, told, values, used)
}

/** A current for a pack; without its unit a number is one only where it is each one's. */
const isToBeSet = ({ kind, typed, each, cue }: Candidate): boolean =>
  cue !== 'than' && (kind === 'rate' || (kind === 'current' && (each === true || /[a-z]/i.test(typed))))

const namesPack = (value: Candidate): value is Candidate & { readonly pack: PackTold } =>
  value.kind === 'pack' && value.pack?.capacity_Ah !== undefined

/** "Both" behind two kinds of pack is one of each. */
const countsBehind = ({ text, typed, next = '' }: Candidate, kinds: number): boolean =>
  Number(text) > 1 &&
  (ofThem.test(next) || /^[x*]|x$/i.test(typed) || (kinds === 1 && /^(?:both|pair|couple)$/i.test(typed)))

/** Cells stand no higher. */
/** As far apart the ends of a range are: "3.70 to 3.74". */
const widestRange_V = 0.2
const leastSure = 0.2
/** "One cell" of a pack is told less surely than that all have so many. */
const leastOfAll = 0.5

/** Where packs stand, none that they are to be brought to; several readings in a row are of several packs. */
function levelsOf(value: Candidate, { kind: of }: OptionWords, last: Told | undefined): readonly ToldLevel[] {
  const { kind, text, holders, score } = value
  if (of !== 'session packs' || text === '' || score < leastSure) return []
  if (kind === 'cellVolts') return text.split(' ').map(volts => ({ text: `${volts}V per cell`, holders: undefined }))
  const volts = Number.parseFloat(text)
  if (kind === 'voltage') return [{ text: `${text} ${volts > highestCell_V ? 'pack' : 'per cell'}`, holders }]
  const before = last?.levels.at(-1)
  const endsRange = before !== undefined && Math.abs(volts - Number.parseFloat(before.text)) <= widestRange_V
  // "Eight packs, three are full".
  const areSome = typeof holders === 'number' && holders < (last?.count ?? 0)
  const isGoal = (text === 'full' && !areSome) || (isToldGoal(value) && !endsRange)
  return kind === 'state' && !isGoal ? [{ text, holders }] : []
}

/** One type told, and one count of cells, is that of all packs of which none was told. */
function writtenList(
  list: OptionWords,
  told: readonly Told[],
  values: readonly Candidate[],
  used: Set<Candidate>,
): Listed {
  const apart = values.filter(value => value.score > leastOfAll && !namesPack(value) && value.kind !== 'capacity')
  const ofAll = <const P extends 'series' | 'chemistry'>(part: P): PackTold[P] => {
    const beside = apart.filter(value => toldBy(value)?.[part] !== undefined)
    const named = new Set([...told.map(({ pack }) => pack), ...beside.map(toldBy)].map(pack => pack?.[part]))
    named.delete(undefined)
    if (named.size !== 1) return undefined
    for (const value of beside) used.add(value)
    return [...named][0]
  }
  const common = { series: ofAll('series'), chemistry: ofAll('chemistry') }
  const wholes = told.map(({ pack }) => wholePack(together([pack, common])))
  const packs = told.map(
    ({ count, levels }, at): ToldPacks => ({
      pack: [wholes[at]?.text ?? '', told[at]?.current].filter(text => text !== undefined).join(' at '),
      count,
      levels,
    }),
  )
  const entries =
    list.kind === 'packs'
      ? packs.map(({ pack, count = 1 }, at) => times(count, [pack, told[at]?.mass]))
      : deal(packs).map(({ pack, count, level }) => times(count, [pack, level && `at ${level}`]))
  return {
    option: list.name,
    text: entries.join('; '),
    used,
    assumed: [...new Set(wholes.flatMap(({ assumed }) => assumed))],
    doubts: [...new Set(wholes.flatMap(({ doubts }) => doubts))],
  }
}

const times = (count: number, parts: readonly (string | undefined)[]): string =>
  [count > 1 ? `${count}x` : undefined, ...parts].filter(part => part !== undefined).join(' ')
