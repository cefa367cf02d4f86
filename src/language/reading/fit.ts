// A command and the values of a sentence, fitted: its details filled, what was assumed, what is left over, what is missing.

import { type PlugName, weakestOf } from '../../charging/leads/plug.ts'
import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Said } from '../../ground/locale.ts'
import { attempt } from '../../ground/problem.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import { mostPrinted_C } from '../parts/draft.ts'
import { readRate } from '../quantities/quantities.ts'
import type { Question } from '../sentence/question.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { type KeptPacks, keptList } from './kept-list.ts'
import { listed } from './listed.ts'
import { suited } from './suited.ts'
import { chemistryAssumed, readAsCapacity } from './told/assumed.words.ts'
import { bareCapacity } from './told/bare-capacity.ts'
import { alike, chargersListed } from './told/charger-told.ts'
import { cellTypeOf, packTold } from './told/pack-filled.ts'
import { packsOf, withType } from './told/packs-told.ts'
import { goalsFirst, slotFor } from './told/slots.ts'
import { commonest, type PackTold, toldBy, toldIn, wholePack } from './told/told-pack.ts'

/** What is asked back; of cells the counts that fit what was told. */
export type Missing = 'capacity' | { readonly option: string } | { readonly cells: readonly number[] }

export interface Fitted {
  readonly command: string
  readonly options: Readonly<Record<string, string>>
  readonly assumed: readonly Said[]
  readonly doubts: readonly Doubt[]
  /** Values that no detail takes. */
  readonly left: readonly Candidate[]
  readonly missing: Missing | undefined
  readonly told: PackTold | undefined
}

/** Options of an earlier question that hold on, in notation. */
export type Kept = Readonly<Record<string, string>>

/**
 * `found` stand apart from each other. `kept` fills what the sentence leaves open; `before` is what was told of the
 * pack earlier, which the sentence's own parts replace.
 */
export function fitTo(command: CommandWords, found: readonly Candidate[], kept: Kept = {}, before?: PackTold): Fitted {
  const values = suited(withCapacity(found, before), command, before?.series ?? toldIn(kept.pack ?? '')?.series)
  const list = listed(values, command, keptPacks(kept))
  const chargers = chargersListed(values, command)
  const packs = list ? { charged: undefined, feeding: undefined, used: list.used } : packsOf(values, command)
  const takesPack = command.options.some(({ kind }) => kind === 'pack')
  const bare = packs.charged && takesPack ? bareCapacity(values, packs.charged) : undefined
  const options: Record<string, string> = { ...(list && { [list.option]: list.text }), ...chargers?.options }
  if (packs.feeding) options.source = wholePack(packs.feeding).text ?? ''
  const isUsed = (value: Candidate) => packs.used.has(value) || chargers?.used.has(value) || value === bare?.of
  const left = placed(
    values.filter(value => !isUsed(value)),
    command,
    options,
    list !== undefined,
  )
  const assumed: Said[] = [...(list?.assumed ?? [])]
  const doubts: Doubt[] = [...(list?.doubts ?? [])]
  const feeding = withType(options.source)
  if (feeding !== undefined) {
    options.source = feeding
    assumed.push(chemistryAssumed(commonest))
  }
  if (bare) {
    assumed.push(readAsCapacity(bare.of.typed, bare.capacity_Ah))
    doubts.push('notUnderstood')
  }
  const label = list ? undefined : values.find(value => value.ofLabel)
  const labelled = label && attempt(() => ({ labelRate_C: readRate(label.text, { max: mostPrinted_C }) }))
  const isTold = packs.charged !== undefined || before !== undefined
  const parts = isTold ? { ...before, ...packs.charged, ...labelled } : undefined
  const ofPack = packTold(command, values, { ...kept, ...options }, parts, kept, bare?.capacity_Ah)
  Object.assign(options, ofPack.filled)
  assumed.push(...ofPack.assumed)
  doubts.push(...ofPack.doubts)
  const { told, cells } = ofPack
  // Cells alone that were told before are those of the pack that is told now.
  const isToldByPack = (name: string) => name === cellTypeOf(command)?.name && options.pack !== undefined
  for (const { name } of command.options)
    if (options[name] === undefined && kept[name] !== undefined && !isToldByPack(name)) options[name] = kept[name]
  countedAnew(options, kept, chargers?.options)
  const missing = cells ? { cells } : missingOf(command, options, told)
  return { command: command.name, options, assumed, doubts, left, missing, told }
}

/** Of a pack that was told by its cells alone so many mAh are its label. */
const withCapacity = (values: readonly Candidate[], before: PackTold | undefined): readonly Candidate[] =>
  before?.series === undefined || before.capacity_Ah !== undefined
    ? values
    : values.map(value => (value.kind === 'capacity' ? { ...value, kind: 'pack', pack: toldBy(value) } : value))

/** Fills the details that the values tell; gives those that no detail takes. */
function placed(
  values: readonly Candidate[],
  command: CommandWords,
  options: Record<string, string>,
  isList: boolean,
): Candidate[] {
  const takes = (kind: string) => command.options.some(option => option.kind === kind)
  // Where volts are told "dead" is said of something else: "the slope was dead".
  const tellsLevel = values.some(({ kind, text }) => kind === 'state' && /\d/.test(text))
  const plugs = values.flatMap(({ kind, text }) => (kind === 'plug' ? [text as PlugName] : []))
  // What is charged through which plug changes nothing, of several the weakest decides, and one is meant where no count is told.
  const isNone = (value: Candidate) =>
    (value.kind === 'state' && value.text === '' && tellsLevel) ||
    (value.kind === 'plug' && (!takes('plug') || value.text !== weakestOf(plugs))) ||
    (value.kind === 'count' && value.text === '1' && takes('count')) ||
    isNamedByCommand(value, command) ||
    isToldByCount(value, command) ||
    // Where each cell is told, how far they lie apart is told too.
    (value.kind === 'apart' && takes('cell volts')) ||
    value.ofLabel
  return goalsFirst(values, command).filter(value => {
    if (isNone(value)) return false
    // Of two packs that contradict each other the other one is left over.
    const slot = value.kind === 'pack' ? undefined : slotFor(value, command, name => options[name] !== undefined)
    // "Dead", "0 %": what names no level is for its reader to ask about.
    const text = value.text || (/\d/.test(value.typed) ? '0%' : value.typed)
    if (slot) options[slot.name] = value.each && isList ? `${text} each` : text
    return slot === undefined
  })
}

/** "A board for five packs, 6S 1300", "make it three ports": so many of what was told. */
function countedAnew(options: Record<string, string>, kept: Kept, told: Kept | undefined): void {
  const { places, packs, ports } = options
  if (places !== undefined && packs !== undefined && !/;|^\d+x/.test(packs)) {
    options.packs = `${places}x ${packs}`
    delete options.places
  }
  const { one } = alike(kept.chargers)
  if (one !== undefined && told && told.chargers === undefined && ports !== undefined) {
    options.chargers = `${ports}x ${one}`
    delete options.ports
  }
}

/** The question that came of it, with the words that it leaves unused. */
export const questionOf = ({ command, options, left }: Fitted): Question => ({
  command,
  options,
  notUsed: left.length > 0 ? left.map(({ typed }) => typed) : undefined,
})

/** "Storage for 3S": the word that asks for the command is no detail of it. */
const isNamedByCommand = ({ kind, text, cue }: Candidate, { name, options }: CommandWords): boolean =>
  (kind === 'state' || kind === 'source') &&
  text === name &&
  cue !== 'from' &&
  !options.some(option => option.name === 'to')

function keptPacks({ pack, packs }: Kept): KeptPacks | undefined {
  const told = pack === undefined ? undefined : toldIn(pack)
  return told ? { pack: told } : packs === undefined ? undefined : keptList(packs)
}

/** "On one board", "at once" of what is counted or listed anyway. */
const isToldByCount = ({ kind, text }: Candidate, { options }: CommandWords): boolean =>
  kind === 'board' && text === '' && options.some(({ name }) => name === 'places' || name === 'count')

function missingOf(
  { options: taken, anyOf }: CommandWords,
  options: Readonly<Record<string, string>>,
  told: PackTold | undefined,
): Missing | undefined {
  const isOpen = (name: string) => options[name] === undefined
  const open =
    taken.find(({ name, required }) => required && isOpen(name)) ??
    taken.find(({ name }) => name === anyOf?.find(names => names.every(isOpen))?.[0])
  if (!open) return undefined
  return open.kind === 'pack' && told !== undefined ? 'capacity' : { option: open.name }
}
