// The values of a sentence as a command can use them: parted where it has no use for the whole, put together where it asks for that.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { withChargers } from './charger-told.ts'
import { withoutMadeOf } from './made-of.ts'
import { people } from './slots.ts'
import { toldBy } from './told-pack.ts'

/** The kinds of option that take what is told by several figures, or by volts that say where a pack stands. */
const takenBy: Readonly<Partial<Record<Candidate['kind'], readonly string[]>>> = {
  charger: ['charger', 'session chargers'],
  source: ['source', 'session sources'],
  state: ['from', 'to', 'session packs', 'cell volts'],
}

const highestCell_V = 4.5

/** Values of the text, in its order. */
export function suited(values: readonly Candidate[], command: CommandWords, series?: number): readonly Candidate[] {
  const takes = (kinds: readonly string[] = []) => command.options.some(({ kind }) => kinds.includes(kind))
  const isOfPack = values.some(({ pack }) => pack?.capacity_Ah !== undefined)
  const plain = withoutMadeOf(
    grown(ofOneCar(ofAllPeople(values.filter(({ kind }) => kind !== 'load')))),
    command,
  ).flatMap(value => {
    const { kind, parts = [] } = value
    // Volts are volts where they are asked for as such, and no pack stands at them.
    const isOfCell = kind === 'state' && isOfPack && Number.parseFloat(value.text) < highestCell_V
    const isPlain = kind === 'state' && takes(['voltage']) && !(takes(['from', 'to']) && isOfPack)
    // "A 13.8 V supply": its amps are what is looked for.
    const isVolts = kind === 'source' && /^\d+(?:\.\d+)?V$/.test(value.text) && takes(['voltage'])
    return parts.length > 0 && !isOfCell && (isPlain || isVolts || !takes(takenBy[kind])) ? parts : [value]
  })
  const read = takes(['cell volts']) ? withReadings(plain, series) : takes(['load']) ? withLoads(plain) : plain
  const told = takes(['pack']) && takes(['capacity']) ? withLabel(read) : read
  // A sum weighs what was used, a charge begins behind it.
  const weighs = command.options.some(({ name }) => name === 'duration' || name === 'back')
  const labelled = takes(['from']) && !weighs ? withUsed(told) : told
  return withoutUnknown(withoutFuse(withStart(withStore(withChargers(labelled, command), command))), command)
}

const unknown = /^(?:power bank|power station|leisure battery|lead battery|generator)$/

/** What feeds, of which only the kind is told beside so many packs or what chargers take: how large it must be is open. */
function withoutUnknown(values: readonly Candidate[], { name }: CommandWords): readonly Candidate[] {
  const isLoad = values.some(({ kind, taken }) => (name === 'supply' ? taken : kind === 'count'))
  return isLoad && (name === 'source' || name === 'supply')
    ? values.filter(({ kind, text }) => kind !== 'source' || !unknown.test(text))
    : values
}

const [car, itsBattery] = [/^car(?: battery)?(?!.*Ah)/, /^(?:car|lead) battery (?=.*Ah)/]

/** "With the car, its battery has 60 Ah": one source told twice. */
function ofOneCar(values: readonly Candidate[]): readonly Candidate[] {
  const of = (text: RegExp) => values.find(value => value.kind === 'source' && text.test(value.text))
  const [whole, part] = [of(car), of(itsBattery)]
  if (!whole || !part) return values
  const text = `${whole.text} ${part.text.replace(itsBattery, '')}`
  return values.flatMap(value => (value === part ? [] : [value === whole ? { ...value, text } : value]))
}

/** Watt-hours that nothing else of the command can be are those of what feeds it: "the 650 Wh one". */
function withStore(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  const takes = (name: string) => options.some(({ kind }) => kind === name)
  const store = values.find(({ kind }) => kind === 'energy')
  if (!store || takes('energy') || !takes('source') || values.some(({ kind }) => kind === 'source')) return values
  return values.map(value =>
    value === store ? { ...value, kind: 'source', text: `power station ${value.text}` } : value,
  )
}

/** "1900 out of 2200 mAh": of two capacities the one that the other is out of, else the larger, is the pack's. */
function withLabel(values: readonly Candidate[]): readonly Candidate[] {
  const told = values.filter(({ kind, pack }) => kind === 'capacity' || (pack?.capacity_Ah && !pack.series))
  if (told.length !== 2 || values.some(value => !told.includes(value) && value.pack?.capacity_Ah)) return values
  const whole =
    told.find(({ cue = '' }) => /^(?:of|from|into)$/.test(cue)) ?? told.toSorted((a, b) => sizeOf(b) - sizeOf(a))[0]
  return values.map(value => {
    if (value === whole) return { ...value, kind: 'pack', pack: toldBy(value) }
    return told.includes(value) ? { ...value, kind: 'capacity', pack: undefined } : value
  })
}

/** "4S 1300, 800 mAh out": where it stands now, unless that is told too. */
function withUsed(values: readonly Candidate[]): readonly Candidate[] {
  const used = values.find(({ kind, cue, next = '' }) => kind === 'capacity' && (cue === 'used' || usedUp.test(next)))
  const { capacity_Ah: whole_Ah = 0 } = values.find(({ pack }) => pack?.capacity_Ah)?.pack ?? {}
  const left = used && 1 - (toldBy(used)?.capacity_Ah ?? 0) / whole_Ah
  if (left === undefined || !(left > 0) || values.some(({ kind, text }) => kind === 'state' && text !== 'full'))
    return values
  return values.map(value =>
    value === used ? { ...value, kind: 'state', text: `${Math.round(left * 100)}%`, cue: 'from' } : value,
  )
}
const usedUp = /^(?:used|out|gone|drained|flown)$/

const sizeOf = ({ text }: Candidate): number => Number.parseFloat(text)

/** "Nine people bring four 3S 2200 each": as many as all of them have. */
function ofAllPeople(values: readonly Candidate[]): readonly Candidate[] {
  const who = values.find(
    ({ kind, text, next = '' }) => kind === 'count' && Number(text) > 1 && (next === 'of' || people.test(next)),
  )
  const packs = values.find(({ pack, next }) => (pack?.count ?? 1) > 1 && /^(?:each|apiece)$/.test(next ?? ''))
  if (!who || !packs?.pack) return values
  const count = Number(who.text) * (packs.pack.count ?? 1)
  return values.flatMap(value => {
    if (value === packs) return [{ ...value, pack: { ...packs.pack, count } }]
    const isOfPacks = value.kind === 'count' && value.end <= packs.start && packs.start - value.end < 3
    return value === who ? [] : [isOfPacks ? { ...value, text: String(count) } : value]
  })
}

/** "From 4 to 15 mohm, the others are at 5": resistance only grows, so the most is now, the least was at first. */
function grown(values: readonly Candidate[]): readonly Candidate[] {
  const told = values.filter(({ kind }) => kind === 'resistance').toSorted((a, b) => sizeOf(b) - sizeOf(a))
  const [most, ...others] = told
  const first = others.find(({ cue = '' }) => /^(?:from|was|were)$/.test(cue)) ?? others.at(-1)
  return most && first ? [...values.filter(value => !told.includes(value)), most, first] : values
}

const packVolts = /^(\d+(?:\.\d+)?)V/

/** "16.6 at rest and 15.1 at 40 A": the less it gives the higher its volts, so which belong together is clear. */
function withLoads(values: readonly Candidate[]): readonly Candidate[] {
  const volts = values.filter(({ kind, text }) => (kind === 'state' || kind === 'voltage') && packVolts.test(text))
  const amps = values.filter(({ kind }) => kind === 'current')
  if (volts.length !== 2 || amps.length < 1 || amps.length > 2) return values
  const by = (of: readonly Candidate[]) => of.toSorted((a, b) => Number.parseFloat(a.text) - Number.parseFloat(b.text))
  const loads = ['rest', ...by(amps).map(({ text }) => text)].slice(-2)
  const readings = by(volts).toReversed()
  const rows = readings.map((value, at): Candidate => {
    const text = `${loads[at]} ${packVolts.exec(value.text)?.[0]}`
    return { ...value, kind: 'load', text, cue: undefined }
  })
  return [...values.filter(value => !volts.includes(value) && !amps.includes(value)), ...rows]
}

const ofCell = /^[2-4]\.\d+(?=V(?: per cell)?$)/

const isCountOf = ({ pack, end }: Candidate, { holders, start }: Candidate): boolean =>
  pack?.capacity_Ah === undefined && pack?.series === holders && end < start

const countOf = (holders: Candidate['holders']): number => (typeof holders === 'number' ? holders : 1)

/** "One cell is 3.96, the other two 4.05": volts of cells told one by one are the readings of a pack. */
function withReadings(values: readonly Candidate[], series: number | undefined): readonly Candidate[] {
  const told = values.filter(({ kind, text, holders }) => kind === 'state' && ofCell.test(text) && holders !== 'all')
  const [first] = told
  if (!first || told.length < 2 || values.some(({ kind }) => kind === 'cellVolts')) return values
  const sum = told.reduce((all, { holders }) => all + countOf(holders), 0)
  const cells = values.find(({ pack }) => (pack?.series ?? 1) > 1)?.pack?.series ?? Math.max(series ?? sum, sum)
  // "The others": as many as the pack has besides.
  const readings = told.flatMap(({ text, holders }) =>
    Array<string>(holders === 'rest' ? Math.max(1, cells - sum + 1) : countOf(holders)).fill(
      ofCell.exec(text)?.[0] ?? '',
    ),
  )
  const row: Candidate = {
    ...first,
    kind: 'cellVolts',
    text: readings.join(' '),
    typed: told.map(({ typed }) => typed).join(' '),
  }
  // "One cell", "two cells at 3.8": some of those read, and no pack.
  const counts = (value: Candidate) =>
    value.kind === 'count'
      ? told.some(({ holders }) => `${holders}` === value.text)
      : value.pack?.series === 1 || told.some(level => isCountOf(value, level))
  return values.flatMap(value => (value === first ? [row] : told.includes(value) || counts(value) ? [] : [value]))
}

/** "A 30 A fuse for a 12 A charger": what a fuse is made for loads nothing. */
function withoutFuse(values: readonly Candidate[]): readonly Candidate[] {
  const amps = values.filter(({ kind }) => kind === 'current')
  return amps.some(({ next }) => !isFuse.test(next ?? ''))
    ? values.filter(value => !(amps.includes(value) && isFuse.test(value.next ?? '')))
    : values
}
const isFuse = /^fuses?$/

/** "From 7 to 10", "it is 8, out by 9": of two times that both could be the end the first is the start. */
function withStart(values: readonly Candidate[]): readonly Candidate[] {
  const clocks = values.filter(({ kind }) => kind === 'clock')
  const [first, ...others] = clocks
  const isOpen = first !== undefined && others.length > 0 && clocks.every(({ cue }) => cue !== 'start')
  return isOpen ? values.map(value => (value === first ? { ...value, cue: 'start' } : value)) : values
}
