// The values of a sentence as a command can use them: parted where it has no use for the whole, put together where it asks for that.

import type { Candidate } from '../candidates/sentence/candidate.ts'
import { highestCell_V } from '../parts/level-words.ts'
import type { CommandWords } from '../sentence/vocabulary.ts'
import { ofFeed, ofOneCar, withoutUnknown, withStore } from './of-feed.ts'
import { besideReadings, standing, withReadings } from './told/cells-read.ts'
import { withChargers } from './told/charger-told.ts'
import { people } from './told/slots.ts'
import { toldBy } from './told/told-pack.ts'

/** The kinds of option that take what is told by several figures, or by volts that say where a pack stands. */
const takenBy: Readonly<Partial<Record<Candidate['kind'], readonly string[]>>> = {
  charger: ['charger', 'session chargers'],
  source: ['source', 'session sources'],
  state: ['from', 'to', 'session packs', 'cell volts'],
}

type Values = readonly Candidate[]

/** "A 30 A fuse for a 12 A charger", "60C discharge, 5C charge": of several what is said of another thing sets nothing. */
const besides =
  (of: Candidate['kind'], other: RegExp) =>
  (values: Values): Values => {
    const isOther = ({ kind, next = '' }: Candidate) => kind === of && other.test(next)
    return values.some(value => value.kind === of && !isOther(value)) ? values.filter(value => !isOther(value)) : values
  }

const takes = ({ options }: CommandWords, ...kinds: readonly string[]): boolean =>
  options.some(({ kind }) => kinds.includes(kind))
/** What a command makes of the values, one after another, and of which commands. */
const rows: readonly (readonly [
  holds: (of: CommandWords) => boolean,
  (values: Values, of: CommandWords, series?: number) => Values,
])[] = [
  [() => true, values => values.filter(({ kind, text }) => kind !== 'number' || text !== '')],
  [of => !of.options.some(({ name }) => name === 'instead'), withoutReplaced],
  [() => true, besides('rate', /^discharge$/)],
  [() => true, ofOneCar],
  [() => true, besideReadings],
  [() => true, grown],
  [() => true, ofEachPerson],
  [() => true, parted],
  [of => takes(of, 'cell volts'), withReadings],
  [of => takes(of, 'from') && !takes(of, 'voltage'), standing],
  [of => takes(of, 'duration') && takes(of, 'capacity'), withFlown],
  [of => takes(of, 'power') && !takes(of, 'voltage'), withPower],
  [of => takes(of, 'price'), besidesYears],
  [of => takes(of, 'load'), withLoads],
  [of => takes(of, 'pack') && takes(of, 'capacity'), withLabel],
  [() => true, withChargers],
  [({ name }) => name === 'source', withStore],
  [({ name }) => name === 'source', ofFeed],
  [({ options }) => options.some(({ name }) => name === 'start'), withStart],
  [of => takes(of, 'clock'), besidesSun],
  [() => true, besides('current', /^fuses?$/)],
  [() => true, withoutUnknown],
]

/** Values of the text, in its order; `series` are the cells of the pack that was told before. */
export const suited = (values: Values, command: CommandWords, series?: number): Values =>
  rows.reduce((sofar, [holds, make]) => (holds(command) ? make(sofar, command, series) : sofar), values)

/** What is told by several figures, or by volts, in its parts where nothing takes the whole. */
function parted(values: Values, command: CommandWords): Values {
  const isOfPack = values.some(({ pack }) => pack?.capacity_Ah !== undefined)
  const takesVolts = takes(command, 'voltage')
  return values.flatMap(value => {
    const { kind, text, parts = [] } = value
    // Volts are volts where they are asked for as such, and no pack stands at them.
    const isOfCell = kind === 'state' && isOfPack && Number.parseFloat(text) < highestCell_V
    const isPlain = kind === 'state' && takesVolts && !(takes(command, 'from', 'to') && isOfPack)
    // "A 13.8 V supply": its amps are what is looked for.
    const isVolts = kind === 'source' && /^\d+(?:\.\d+)?V$/.test(text) && takesVolts
    const isWhole = takes(command, ...(takenBy[kind] ?? []))
    return parts.length > 0 && !isOfCell && (isPlain || isVolts || !isWhole) ? parts : [value]
  })
}

/** "To 4.10 instead of 4.20": what it stands in for is not asked about. */
function withoutReplaced(values: Values): Values {
  const isReplaced = ({ cue, kind }: Candidate) =>
    cue === 'instead' && values.some(other => other.kind === kind && other.cue !== cue)
  return values.filter(value => !isReplaced(value))
}

/** "1900 out of 2200 mAh": of two capacities the one that the other is out of, else the larger, is the pack's. */
function withLabel(values: Values): Values {
  const told = values.filter(({ kind, pack }) => kind === 'capacity' || (pack?.capacity_Ah && !pack.series))
  if (told.length !== 2 || values.some(value => !told.includes(value) && value.pack?.capacity_Ah)) return values
  const whole =
    told.find(({ cue = '' }) => /^(?:of|from|into)$/.test(cue)) ?? told.toSorted((a, b) => sizeOf(b) - sizeOf(a))[0]
  return values.map(value => {
    if (value === whole) return { ...value, kind: 'pack', pack: toldBy(value) }
    return told.includes(value) ? { ...value, kind: 'capacity', pack: undefined } : value
  })
}

const sizeOf = ({ text }: Candidate): number => Number.parseFloat(text)

/** "From 4 to 15 mohm, the others are at 5": resistance only grows, so the most is now, the least was at first. */
function grown(values: Values): Values {
  const told = values.filter(({ kind }) => kind === 'resistance').toSorted((a, b) => sizeOf(b) - sizeOf(a))
  const [most, ...others] = told
  const first = others.find(({ cue = '' }) => /^(?:from|was|were)$/.test(cue)) ?? others.at(-1)
  return most && first ? [...values.filter(value => !told.includes(value)), most, first] : values
}

/** "Used 40 % in three minutes", "30 % left after five": of a flight so many mAh were used. */
function withFlown(found: Values): Values {
  // "Used 1850 in 5:30": minutes and seconds.
  const isUsed = found.some(({ kind, cue }) => kind === 'capacity' && cue === 'used')
  const values = found.map(value => {
    const [, min, s] =
      (isUsed && value.kind === 'clock' && value.cue === 'in' && /^(\d+):(\d\d)$/.exec(value.text)) || []
    return min === undefined ? value : { ...value, kind: 'duration' as const, text: `${min}min${Number(s)}s` }
  })
  const { capacity_Ah } = values.find(({ pack }) => pack?.capacity_Ah)?.pack ?? {}
  if (capacity_Ah === undefined || !values.some(({ kind }) => kind === 'duration')) return values
  return values.map(value => {
    const used_mAh = capacity_Ah * 10 * (100 - Number.parseFloat(value.text))
    return value.remains ? { ...value, kind: 'capacity', text: `${Math.round(used_mAh)}mAh` } : value
  })
}

/** "31 p a kilowatt-hour, 26 days a year": how often it is paid, and no time that a charge or a flight takes. */
function besidesYears(values: Values): Values {
  const isPaid = values.some(({ kind }) => kind === 'price')
  return values.filter(({ kind, typed }) => !isPaid || kind !== 'duration' || !/year|month|week|day/i.test(typed))
}

const lowestSound_V = 2.5
/** " at ". */
const nextTo = 4

/** "12 V, 1.2 A" of what is run: its watts. */
function withPower(found: Values): Values {
  // "9 W at 12 V" of a lamp on a 6S: where no cell of the pack stands.
  const { series = 1 } = found.find(({ pack }) => pack?.series !== undefined)?.pack ?? {}
  const isBehindPower = ({ start }: Candidate) =>
    found.some(({ kind, end }) => kind === 'power' && start >= end && start - end <= nextTo)
  const isOfThing = (value: Candidate) =>
    value.kind === 'state' && isBehindPower(value) && sizeOf(value) / series < lowestSound_V
  const values = found.filter(value => !isOfThing(value))
  const [volts, amps] = (['voltage', 'current'] as const).map(of => values.find(({ kind }) => kind === of))
  if (!volts || !amps || values.some(({ kind }) => kind === 'power')) return values
  const power_W = Number((sizeOf(volts) * sizeOf(amps)).toFixed(2))
  return values.flatMap((value): Values => {
    if (value === volts) return []
    return [value === amps ? { ...value, kind: 'power', text: `${power_W}W` } : value]
  })
}

const packVolts = /^(\d+(?:\.\d+)?)V/

/** "16.6 at rest and 15.1 at 40 A": the less it gives the higher its volts, so which belong together is clear. */
function withLoads(values: Values): Values {
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

/** "Six pilots bring two 4S 1500 each", "two packs each, six pilots": twelve packs. */
function ofEachPerson(values: Values): Values {
  const who = values.find(({ kind, next = '' }) => kind === 'count' && people.test(next))
  const of = values.find(
    ({ pack, typed, next, start }) => pack && start > (who?.end ?? 0) && /\beach\b/i.test(`${typed} ${next}`),
  )
  const before = values.findLast(({ kind, start }) => kind === 'count' && of !== undefined && start < of.start)
  const packs = values.find(({ kind, each }) => kind === 'count' && each) ?? before
  if (!who || !packs || packs === who) return values
  const all = { ...packs, text: String(Number(packs.text) * Number(who.text)) }
  return values.flatMap((value): Values => {
    if (value === who) return []
    if (value === packs) return [all]
    const { pack } = value
    return [
      value === of && pack?.count !== undefined ? { ...value, pack: { ...pack, count: Number(all.text) } } : value,
    ]
  })
}

/** "The sun is off the panel at seven" tells when to be done, where nothing is told of the panel but that. */
function besidesSun(values: Values): Values {
  const isOfTimes = values.filter(({ kind }) => kind === 'clock').length > 1
  return isOfTimes ? values.filter(({ kind, text }) => kind !== 'source' || text !== 'solar panel') : values
}

/** "From 7 to 10", "it is 8, out by 9": of two times that both could be the end the first is the start. */
function withStart(values: Values): Values {
  const clocks = values.filter(({ kind }) => kind === 'clock')
  const [first, ...others] = clocks
  const isOpen = first !== undefined && others.length > 0 && clocks.every(({ cue }) => cue !== 'start' && cue !== 'now')
  return isOpen ? values.map(value => (value === first ? { ...value, cue: 'start' } : value)) : values
}
