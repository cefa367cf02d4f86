// A command and the values of a sentence, fitted: its details filled, what was assumed, what is left over, what is missing.

import type { Doubt } from '../../charging/situation/doubts.ts'
import type { Said } from '../../ground/locale.ts'
import { attempt } from '../../ground/problem.ts'
import type { Candidate } from '../candidates/sentence/candidate.ts'
import { readRate } from '../quantities/quantities.ts'
import type { Question } from '../sentence/question.ts'
import type { CommandWords, OptionWords } from '../sentence/vocabulary.ts'
import { readAsAmps } from './assumed.words.ts'
import { chargersListed } from './charger-told.ts'
import { listed } from './listed.ts'
import { goalsFirst, slotFor } from './slots.ts'
import { suited } from './suited.ts'
import { contradict, type PackTold, together, toldBy, toldIn, type WholePack, wholePack } from './told-pack.ts'

export type Missing = 'capacity' | { readonly option: string }

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
  const values = suited(found, command)
  const options: Record<string, string> = {}
  const left: Candidate[] = []
  const takes = (kind: string) => command.options.find(option => option.kind === kind)
  const list = listed(values, command, kept.pack === undefined ? undefined : toldIn(kept.pack))
  const chargers = chargersListed(values, command)
  for (const one of [list, chargers]) if (one) options[one.option] = one.text
  const packs = list ? { charged: undefined, feeding: undefined, used: list.used } : packsOf(values, command)
  if (packs.feeding) options.source = wholePack(packs.feeding).text ?? ''
  for (const value of goalsFirst(values)) {
    if (packs.used.has(value) || chargers?.used.has(value) || isNamedByCommand(value, command) || isOfLabel(value))
      continue
    const slot = slotFor(value, command, name => options[name] !== undefined)
    if (slot) options[slot.name] = value.text
    else left.push(value)
  }
  const assumed: Said[] = [...(list?.assumed ?? []), ...amps(left, command, options)]
  const doubts: Doubt[] = [...(list?.doubts ?? [])]
  const cellType = takes('cells') ?? takes('chemistry')
  // Volts alone say nothing of cells whose type is open: the commonest are taken, and that is said.
  const isOpen = cellType !== undefined && kept.pack === undefined && kept[cellType.name] === undefined
  const label = list ? undefined : values.find(isOfLabel)
  const labelled = label && attempt(() => ({ labelRate_C: readRate(label.text) }))
  const told = packs.charged || before ? { ...before, ...packs.charged, ...labelled } : isOpen ? {} : undefined
  // How many cells there are is not answered by their type.
  if (told && (cellType?.name !== 'cells' || Object.keys(told).length > 0)) {
    const whole = wholePack(told)
    const filled = fillPack(whole, takes('pack')?.name, cellType)
    Object.assign(options, filled)
    if (Object.keys(filled).length > 0) {
      assumed.push(...whole.assumed)
      doubts.push(...whole.doubts.filter(doubt => doubt !== 'cellsUnknown' || whole.text !== undefined))
    }
  }
  for (const [name, text] of Object.entries(kept)) {
    if (options[name] === undefined && command.options.some(option => option.name === name)) options[name] = text
  }
  return { command: command.name, options, assumed, doubts, left, missing: missingOf(command, options, told), told }
}

/** The question that came of it, with the words that it leaves unused. */
export const questionOf = ({ command, options, left }: Fitted): Question => ({
  command,
  options,
  notUsed: left.length > 0 ? left.map(({ typed }) => typed) : undefined,
})

const labelCues: ReadonlySet<string> = new Set(['says', 'say', 'allows', 'reads', 'printed', 'label', 'states'])

/** "Label says 3C", "3C charge": what the label allows, not what is to be set. */
export const isOfLabel = ({ kind, cue = '', next }: Candidate): boolean =>
  kind === 'rate' && (labelCues.has(cue) || (next === 'charge' && cue !== 'at'))

/** "Storage for 3S": the word that asks for the command is no detail of it. */
const isNamedByCommand = ({ kind, text }: Candidate, { name, options }: CommandWords): boolean =>
  kind === 'state' && text === name && !options.some(option => option.name === 'to')

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
    taken.find(({ name }) => name === anyOf?.[0] && anyOf.every(isOpen))
  if (!open) return undefined
  return open.kind === 'pack' && told !== undefined ? 'capacity' : { option: open.name }
}

interface Packs {
  readonly charged: PackTold | undefined
  readonly feeding: PackTold | undefined
  readonly used: ReadonlySet<Candidate>
}

const feedCues: ReadonlySet<string> = new Set(['from', 'off', 'using', 'out', 'with'])
/** Parts of one pack are put together; of two that contradict each other one feeds, where the command knows a source. */
function packsOf(values: readonly Candidate[], { options }: CommandWords): Packs {
  const takesCapacity = options.some(({ kind }) => kind === 'capacity')
  const told = values.filter(value => toldBy(value) && !(value.kind === 'capacity' && takesCapacity))
  const takesSource = options.some(({ kind }) => kind === 'source')
  const used = new Set<Candidate>()
  let charged: PackTold[] = []
  let feeding: PackTold | undefined
  for (const value of told) {
    const { cue = '' } = value
    const pack = toldBy(value) as PackTold
    const clashes = charged.length > 0 && contradict(together(charged), pack)
    const feeds = takesSource && feeding === undefined && pack.capacity_Ah !== undefined && feedCues.has(cue)
    if (feeds && (clashes || told.length > 1)) {
      feeding = pack
      used.add(value)
    } else if (!clashes) {
      charged.push(pack)
      used.add(value)
    } else if (takesSource && feeding === undefined && pack.capacity_Ah !== undefined) {
      // The larger of two feeds the smaller.
      const first = together(charged)
      const isLarger = pack.capacity_Ah > (first.capacity_Ah ?? 0)
      feeding = isLarger ? pack : first
      if (!isLarger) charged = [pack]
      used.add(value)
    }
  }
  return { charged: charged.length > 0 ? together(charged) : undefined, feeding, used }
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
