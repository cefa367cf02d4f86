// What the last question lends to the next: all of it that the next does not tell anew.

import { attempt } from '../../../ground/problem.ts'
import type { Candidate } from '../../candidates/sentence/candidate.ts'
import type { Frame } from '../../frames/frame.ts'
import type { Kept } from '../../reading/fit.ts'
import { isOfNamed } from '../../reading/free-words.ts'
import { keptEntries, keptList } from '../../reading/kept-list.ts'
import { alike } from '../../reading/told/charger-told.ts'
import { namesPack, type PackTold, together, toldBy, toldIn } from '../../reading/told/told-pack.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import { readCellType } from '../../things/cell-type.ts'
import { isSource } from './as-before.ts'

export interface Lent {
  readonly kept: Kept
  /** What was told of the pack, where the sentence tells another part of it. */
  readonly before?: PackTold | undefined
}

/** For the same question with other details. */
export function heldOn({ question: { options }, pending }: Frame, values: readonly Candidate[]): Lent {
  const { pack, ...rest } = options
  const part = pack === undefined ? pending?.told : undefined
  if (!values.some(value => toldBy(value) !== undefined || value.ofLabel)) return { kept: options, before: part }
  // What was measured of a pack does not hold for another one.
  const { capacity: _, resistance: __, ...unmeasured } = rest
  return {
    kept: pack === undefined ? rest : unmeasured,
    before: pack === undefined ? (part ?? cellsBefore(options)) : toldBefore(pack, values.some(namesPack)),
  }
}

/** Cells without a capacity: "it is a 4S" leaves their type as it was told. */
function cellsBefore({ cells, chemistry = cells }: Kept): PackTold | undefined {
  const told = chemistry === undefined ? undefined : attempt(() => readCellType(chemistry).value)
  return told && { chemistry: told.chemistry.name, series: told.series }
}

/** Of another pack only the type holds on. */
function toldBefore(text: string, isNewPack: boolean): PackTold | undefined {
  const pack = toldIn(text)
  return isNewPack && pack ? { chemistry: pack.chemistry } : pack
}

/** For another question that names no pack, or goes on with a part of one: all that the two have in common. */
export function lentTo(
  frame: Frame | undefined,
  command: CommandWords,
  text: string,
  values: readonly Candidate[],
): Lent {
  const told = values.filter(value => toldBy(value) !== undefined)
  // What is to bear a name is told whole.
  const mayBePart = !isOfNamed(command)
  if (!frame || !isOfPacks(command)) return { kept: {} }
  // "And can it do a 6S 1300": what was told to feed or to charge, as where no pack was spoken of.
  const { pack, packs = pack } = frame.question.options
  if (packs === undefined && told.some(namesPack))
    return {
      kept: inTermsOf(
        command,
        onlyOf(frame.question.options, name => feeds.has(name)),
      ),
    }
  if (told.some(namesPack) || (told.length > 0 && !mayBePart) || areOther(told, pack)) return { kept: {} }
  const { kept, before } = heldOn(frame, values)
  // With a current it would be asked for watts.
  const asksWh = command.name === 'energy' && ofEnergy.test(text)
  // What could not be read of a source was asked for, and is no part of another question.
  const readable = onlyOf(
    kept,
    (name, text) => (name !== 'source' || isSource(text)) && !(name === 'current' && asksWh),
  )
  return { kept: inTermsOf(command, readable), before }
}

/** "Storage volts of a 4S LiHV" behind a 2S LiPo: of other cells and of another type it is none of that. */
function areOther(values: readonly Candidate[], pack = ''): boolean {
  const [told, before] = [together(values.map(value => toldBy(value) ?? {})), toldIn(pack)]
  const differs = (part: 'series' | 'chemistry') => told[part] !== undefined && told[part] !== before?.[part]
  return before !== undefined && differs('series') && differs('chemistry')
}

export const ofEnergy = /\b(?:wh|watt-?\s?hours?|energy)\b/i
const onlyOf = (kept: Kept, isWanted: (name: string, text: string) => boolean): Kept =>
  Object.fromEntries(Object.entries(kept).filter(([name, text]) => isWanted(name, text)))
const feeds: ReadonlySet<string> = new Set(['source', 'charger', 'chargers'])
/** Nothing is told anew but that it is charged full: "once" and "one more thing" count nothing. */
export const isOfPack = (values: readonly Candidate[]): boolean =>
  values.every(({ text }) => text === 'full' || text === '1')

export const packKinds: ReadonlySet<string> = new Set(['pack', 'packs', 'session packs'])
export const isOfPacks = ({ options }: CommandWords): boolean => options.some(({ kind }) => packKinds.has(kind))

/** A detail that bears another name there goes by its kind; one pack is a list of packs too, and a list of one kind a pack. */
function inTermsOf(command: CommandWords, kept: Kept): Kept {
  const { options } = command
  const has = (name: string) => options.some(option => option.name === name)
  const lists = options.filter(({ kind }) => kind !== 'pack' && packKinds.has(kind))
  const states = options.filter(({ name }) => name === 'from' || name === 'at')
  const terms = Object.entries(kept).flatMap(([name, text]): readonly (readonly [string, string])[] => {
    if (name === 'charger' || name === 'chargers') return chargersIn(command, text)
    if (has(name)) return [[name, text]]
    if (name === 'pack' && lists[0])
      return [[lists[0].name, kept.count && !has('count') ? `${kept.count}x ${text}` : text]]
    if ((name === 'from' || name === 'at') && states[0]) return [[states[0].name, text]]
    const list = name === 'packs' ? keptList(text) : undefined
    if (!list) return []
    const { count = 1 } = list
    return [
      ['pack', keptEntries(text)[0]?.pack ?? ''],
      ...(count > 1 && has('count') ? [['count', `${count}`] as const] : []),
    ]
  })
  return Object.fromEntries(terms)
}

/** Several chargers, or one of them where one is all that there is room for. */
function chargersIn({ options }: CommandWords, text: string): readonly (readonly [string, string])[] {
  const many = options.find(({ kind }) => kind === 'session chargers')
  const one = options.find(({ kind }) => kind === 'charger')
  const { one: single } = alike(text)
  if (many) return [[many.name, text]]
  return one && single !== undefined ? [[one.name, single]] : []
}
