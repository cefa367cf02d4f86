// A command and the values of a sentence, fitted: its details filled, what was assumed, what is left over, what is missing.

import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Said } from '../../ground/locale.ts'
import { attempt } from '../../ground/problem.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import { readRate } from '../quantities/quantities.ts'
import type { Question } from '../sentence/question.ts'
import type { CommandWords, OptionWords } from '../sentence/vocabulary.ts'
import { chemistryAssumed, readAsAh, readAsAmps } from './assumed.words.ts'
import { bareCapacity } from './bare-capacity.ts'
import { cellsByVolts, cellsRead } from './cells-told.ts'
import { alike, chargersListed } from './charger-told.ts'
import { type KeptPacks, keptList, listed } from './listed.ts'
import { packsOf, withType } from './packs-told.ts'
import { goalsFirst, slotFor } from './slots.ts'
import { suited } from './suited.ts'
import { commonest, type PackTold, together, toldIn, type WholePack, wholePack } from './told-pack.ts'

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
  /** What was told of the pack that is charged. */
  readonly told: PackTold | undefined
}

/** Options of an earlier question that hold on, in notation. */
export type Kept = Readonly<Record<string, string>>

/**
 * `found` stand apart from each other. `kept` fills what the sentence leaves open; `before` is what was told of the
 * pack earlier, which the sentence's own parts replace.
 */
export function fitTo(command: CommandWords, found: readonly Candidate[], kept: Kept = {}, before?: PackTold): Fitted {
  const values = suited(found, command, before?.series ?? toldIn(kept.pack ?? '')?.series)
  const options: Record<string, string> = {}
  const left: Candidate[] = []
  const takes = (kind: string) => command.options.find(option => option.kind === kind)
  const list = listed(values, command, keptPacks(kept))
  const chargers = chargersListed(values, command)
  if (list) options[list.option] = list.text
  Object.assign(options, chargers?.options)
  const packs = list ? { charged: undefined, feeding: undefined, used: list.used } : packsOf(values, command)
  if (packs.feeding) options.source = wholePack(packs.feeding).text ?? ''
  const bare = packs.charged && takes('pack') ? bareCapacity(values, packs.charged) : undefined
  for (const value of goalsFirst(values, command)) {
    if (packs.used.has(value) || chargers?.used.has(value) || value === bare?.of) continue
    // What is charged through which plug changes nothing.
    if (value.kind === 'plug' && !takes('plug')) continue
    // One is meant where no count is told.
    if (value.kind === 'count' && value.text === '1' && takes('count')) continue
    if (isNamedByCommand(value, command) || isToldByCount(value, command) || value.ofLabel) continue
    // Of two packs that contradict each other the other one is left over.
    const slot = value.kind === 'pack' ? undefined : slotFor(value, command, name => options[name] !== undefined)
    if (slot) options[slot.name] = value.each && list ? `${value.text} each` : value.text
    else left.push(value)
  }
  const assumed: Said[] = [...(list?.assumed ?? []), ...amps(left, command, options)]
  const feeding = withType(options.source)
  if (feeding !== undefined) {
    options.source = feeding
    assumed.push(chemistryAssumed(commonest))
  }
  const doubts: Doubt[] = [...(list?.doubts ?? [])]
  if (bare) {
    assumed.push(readAsAh(bare.of.typed, bare.capacity_Ah))
    doubts.push('notUnderstood')
  }
  const cellType = takes('cells') ?? takes('chemistry')
  // Volts alone say nothing of cells whose type is open: the commonest are taken, and that is said.
  const isOpen =
    cellType !== undefined && !command.everyType && kept.pack === undefined && kept[cellType.name] === undefined
  const label = list ? undefined : values.find(value => value.ofLabel)
  const labelled = label && attempt(() => ({ labelRate_C: readRate(label.text) }))
  const read = cellsRead(values, command)
  const isTold = packs.charged !== undefined || before !== undefined
  const parts = isTold ? { ...before, ...packs.charged, ...labelled } : isOpen || read ? {} : undefined
  const byVolts =
    parts && parts.series === undefined ? cellsByVolts({ ...kept, ...options }, command, parts) : undefined
  // What only volts decide goes by the cells that they fit; what is charged is asked for.
  const [fitting, ...others] = cellType?.kind === 'cells' && byVolts ? byVolts : []
  const isByVolts = fitting !== undefined && others.length === 0 && parts?.capacity_Ah === undefined
  const seen = { series: read ?? (isByVolts ? fitting : undefined), capacity_Ah: bare?.capacity_Ah }
  const told = parts && together([parts, seen])
  const asksCells = byVolts !== undefined && told?.series === undefined
  // How many cells there are is not answered by their type; nor is a type assumed where other details than the pack will do.
  const typeAnswers = cellType?.name !== 'cells' && !command.anyOf?.flat().includes('pack')
  if (told && (typeAnswers || Object.keys(told).length > 0)) {
    const whole = wholePack(told)
    const filled = asksCells ? {} : fillPack(whole, takes('pack')?.name, cellType)
    Object.assign(options, filled)
    if (Object.keys(filled).length > 0) {
      assumed.push(...whole.assumed)
      doubts.push(...whole.doubts.filter(doubt => doubt !== 'cellsUnknown' || whole.text !== undefined))
    }
  }
  if (isByVolts) doubts.push('cellsByVolts')
  for (const [name, text] of Object.entries(kept)) {
    // Cells alone that were told before are those of the pack that is told now.
    const isToldByPack = name === cellType?.name && options.pack !== undefined
    if (options[name] === undefined && !isToldByPack && command.options.some(option => option.name === name))
      options[name] = text
  }
  // "A board for five packs, 6S 1300": so many of them.
  if (options.places !== undefined && options.packs !== undefined && !/;|^\d+x/.test(options.packs)) {
    options.packs = `${options.places}x ${options.packs}`
    delete options.places
  }
  // "Make it three ports": as many of the charger that was told before.
  const { one } = alike(kept.chargers)
  if (one !== undefined && chargers && chargers.options.chargers === undefined && options.ports !== undefined) {
    options.chargers = `${options.ports}x ${one}`
    delete options.ports
  }
  const missing = asksCells ? { cells: byVolts ?? [] } : missingOf(command, options, told)
  return { command: command.name, options, assumed, doubts, left: unasked(left, options), missing, told }
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

/** "Is it full" beside volts that say where it stands: what is asked, and no detail left over. */
const unasked = (left: readonly Candidate[], { at }: Readonly<Record<string, string>>): readonly Candidate[] =>
  at === undefined ? left : left.filter(({ kind, text }) => kind !== 'state' || /\d/.test(text))

function fillPack(
  { text, cells, chemistry }: WholePack,
  pack: string | undefined,
  cellType: OptionWords | undefined,
): Record<string, string> {
  if (text !== undefined && pack !== undefined) return { [pack]: text }
  if (cellType === undefined) return {}
  return { [cellType.name]: cellType.kind === 'chemistry' ? chemistry : cells }
}

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

/** "At 15 then": a bare number behind "at", where only a current is open. */
function amps(left: Candidate[], { options }: CommandWords, filled: Record<string, string>): Said[] {
  const current = options.find(({ name }) => name === 'current')
  const index = left.findIndex(({ kind, cue }) => kind === 'number' && cue === 'at')
  const number = left[index]
  if (!current || !number || filled.current !== undefined || !(Number(number.text) <= 60)) return []
  left.splice(index, 1)
  filled.current = `${number.text}A`
  return [readAsAmps(number.typed)]
}
