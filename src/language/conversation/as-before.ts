// Values that are told by the last question: "half the amps", a bare "11.7" behind volts, how full what feeds is.

import { attempt } from '../../ground/problem.ts'
import type { Candidate, ValueName } from '../candidates/index.ts'
import { readCurrent, readPower } from '../quantities/quantities.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import type { Kept } from '../reading/fit.ts'
import { toldBy } from '../reading/told-pack.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'

/** The values of the text as they are meant behind a question with these details. */
export function asBefore(
  text: string,
  values: readonly Candidate[],
  command: CommandWords,
  options: Kept,
): readonly Candidate[] {
  const part = partOfBefore(text, options)
  const told = part
    ? [...values.filter(({ start, end }) => end <= part.start || start >= part.end), ...part.value].toSorted(
        (a, b) => a.start - b.start,
      )
    : values
  // "And one of 65 W", "the 2S one": it stands for what is meant.
  const isWord = ({ kind, typed, score, next }: Candidate) =>
    kind === 'count' && /^ones?$/i.test(typed) && (score < surely || next === 'of')
  const meant = told.length > 1 ? told.filter(value => !isWord(value)) : told
  return meant.map(
    value =>
      feedingStands(text, value, command, options) ??
      sameKind(value, command, options) ??
      ofItsLabel(text, value, options) ??
      ofItsSource(value, options) ??
      standsFull(text, value) ??
      value,
  )
}

/** A count less sure than this may be no count. */
const surely = 0.3

const factors: readonly (readonly [RegExp, number])[] = [
  [/half/, 1 / 2],
  [/third/, 1 / 3],
  [/quarter/, 1 / 4],
  [/twice|double/, 2],
  [/triple/, 3],
]
const relative =
  /\b(half|(?:a |one )?third|(?:a |one )?quarter|twice|double|triple)(?: of)?(?: (?:the|its?|my))? (that|this|as much|amps?|amperes?|current|watts?|power|speed|rate)\b/i

/** Nothing but what was said before tells how much it is. */
export const isPartOfBefore = (text: string): boolean => relative.test(text)

interface Part {
  readonly start: number
  readonly end: number
  /** None where it cannot be told of what it is a part. */
  readonly value: readonly Candidate[]
}

/** So many times what was told before of the quantity that is named, or of the only one. */
function partOfBefore(text: string, options: Kept): Part | undefined {
  const found = relative.exec(text)
  if (!found) return undefined
  const [typed, named = '', of = ''] = found
  const factor = factors.find(([pattern]) => pattern.test(named.toLowerCase()))?.[1] ?? 1
  const [start, end] = [found.index, found.index + typed.length]
  const current = options.current ?? options.discharge
  const wantsPower = /watt|power/i.test(of) || (current === undefined && options.power !== undefined)
  const before = wantsPower ? options.power : current
  const read = attempt(() => (wantsPower ? readPower : readCurrent)(before ?? ''))
  if (read === undefined) return { start, end, value: [] }
  const kind = wantsPower ? 'power' : 'current'
  return {
    start,
    end,
    value: [{ kind, text: writeQuantity(read * factor, kind), start, end, typed, score: 1, cue: 'at' }],
  }
}

const ofThePacks = /\b(?:they|them|their|these|those|packs?|each|every|lipos?)\b/i
const shares: Readonly<Record<string, string>> = { full: '100%', empty: '0%' }

/** How full, said of a single thing where one feeds others: what feeds. It is the safe way to take it, too. */
function feedingStands(text: string, value: Candidate, { options }: CommandWords, before: Kept): Candidate | undefined {
  const stands = value.kind === 'state' && (/^\d+%$/.test(value.text) || value.text in shares)
  const takes = options.some(({ name }) => name === 'charged') && before.source !== undefined
  if (!stands || !takes || value.cue === 'from' || value.cue === 'to' || ofThePacks.test(text)) return undefined
  return { ...value, kind: 'percent', text: shares[value.text] ?? value.text }
}

const measured = /\b(?:took|takes?|put|went|back|measured|tested|really|actually|left|holds? only)\b/i

/** "Its 2200 mAh": of a pack that was told its label, unless somebody says that it was measured. */
function ofItsLabel(text: string, value: Candidate, { pack }: Kept): Candidate | undefined {
  const capacity_Ah = value.kind === 'capacity' ? toldBy(value)?.capacity_Ah : undefined
  if (capacity_Ah === undefined || pack === undefined || measured.test(text)) return undefined
  return { ...value, kind: 'pack', pack: { capacity_Ah } }
}

const sourceWatts = /\d+(?:\.\d+)?W\b/

/** "And with 65 W", where a source was told by its watts and no charger was told. */
const ofItsSource = (value: Candidate, { source = '', charger }: Kept): Candidate | undefined =>
  value.kind === 'power' && charger === undefined && sourceWatts.test(source)
    ? { ...value, kind: 'source', text: source.replace(sourceWatts, value.text) }
    : undefined

const tellsOfIt =
  /^\W*(?:(?:and|but|no|oh|well|sorry|so|ok) )*(?:it|they|these|those|both|all|mine)(?:'?s|'?re| is| are| were| was)?\b/i

/** "They are full already": where they stand, and not where they are to go. */
const standsFull = (text: string, value: Candidate): Candidate | undefined =>
  value.kind === 'state' && value.text === 'full' && tellsOfIt.test(text) && !text.includes('?')
    ? { ...value, cue: 'from' }
    : undefined

/** How far a number of the same kind may lie from the one before it: volts lie near, others may be doubled. */
const nearVolts = 1.4
const near = 4
const kinds: Readonly<Record<string, ValueName>> = {
  from: 'state',
  to: 'state',
  current: 'current',
  power: 'power',
  temperature: 'temperature',
  resistance: 'resistance',
  'cell resistances': 'resistance',
  voltage: 'voltage',
  length: 'length',
}
const bare: ReadonlySet<ValueName> = new Set(['number', 'count', 'voltage', 'current'])
const leading = /^\d+(?:\.\d+)?/
const onlyNumber = /^\d+(?:[.,]\d+)?$/

/** A bare number is of the kind of the detail that it lies nearest to; one without decimals may be a count. */
function sameKind(value: Candidate, command: CommandWords, before: Kept): Candidate | undefined {
  const typed = Number(leading.exec(value.text)?.[0])
  const isVolts = value.kind === 'voltage' && !onlyNumber.test(value.typed)
  const isBare = bare.has(value.kind) && typed > 0 && (isVolts || onlyNumber.test(value.typed))
  if (!isBare || (value.kind === 'count' && command.options.some(({ kind }) => countable.has(kind)))) return undefined
  const [nearest] = command.options
    .flatMap(({ name, kind }) => {
      const [number] = leading.exec(before[name] ?? '') ?? []
      const of = kinds[kind]
      if (number === undefined || of === undefined || (isVolts && !/V/.test(before[name] ?? ''))) return []
      const apart = Math.abs(Math.log(typed / Number(number)))
      const most = Math.log(/V/.test(before[name] ?? '') ? nearVolts : near)
      return apart > most ? [] : [{ of, kind, text: (before[name] ?? '').replace(leading, `${typed}`), apart }]
    })
    .toSorted((a, b) => a.apart - b.apart)
  if (!nearest) return undefined
  return { ...value, kind: nearest.of, text: nearest.text, ...(nearest.of === 'state' && { cue: nearest.kind }) }
}

const countable: ReadonlySet<string> = new Set(['count', 'packs', 'session packs'])
