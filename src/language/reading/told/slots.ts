// Which detail of a command a value of the sentence is: by the word before it, by name, by kind.

import type { Candidate, ValueName } from '../../candidates/sentence/candidate.ts'
import type { CommandWords, OptionWords } from '../../sentence/vocabulary.ts'

/** The kinds of option that read a kind of value, the likeliest first. */
const readers: Readonly<Partial<Record<ValueName, readonly string[]>>> = {
  charger: ['charger', 'session chargers'],
  source: ['source', 'session sources'],
  current: ['current'],
  rate: ['rate', 'current'],
  voltage: ['voltage'],
  power: ['power', 'drawn power'],
  energy: ['energy'],
  capacity: ['capacity'],
  duration: ['duration'],
  temperature: ['temperature'],
  resistance: ['resistance', 'cell resistances'],
  resistances: ['cell resistances'],
  length: ['length'],
  gauge: ['gauge'],
  count: ['count'],
  cellVolts: ['cell volts'],
  percent: ['percent', 'from'],
  price: ['price'],
  plug: ['plug'],
  load: ['load'],
  state: ['from'],
}

const goalCues: ReadonlySet<string> = new Set(['to', 'until', 'till', 'into', 'up', 'til', 'reach', 'for'])
/** Not a day alone. */
const timeOfDay = /\d:\d/
/** Behind a duration: it is over. */
export const past: ReadonlySet<string> = new Set([
  'ago',
  'in',
  'old',
  'already',
  'gone',
  'late',
  'after',
  'later',
  'rest',
])
/** Cells are evened out with so little. */
const bleeds = /^(?:0?\.[0-5]\d*A|[1-5]?\d{2}mA)$/i
const endCues: ReadonlySet<string> = new Set(['until', 'till', 'til'])

/** What such words count brings packs. */
export const people =
  /^(?:people|persons|members|pilots|guys|lads|girls|boys|friends|pupils|students|juniors|kids|children|flyers|fliers|racers|visitors|guests|newcomers|beginners|teams)$/

/** Before a share that the source is to keep. */
const keeps = 'leave'

/** A share that the source is to keep, and where no pack stands. */
export const asKept = (share: Candidate): Candidate => ({ ...share, kind: 'percent', cue: keeps })

const flown = /^(?:flew|flown)$/

/** Details that a value of their kind alone does not mean. */
const toldByName: ReadonlySet<string> = new Set(['until', 'places', 'ports', 'boards', 'balance'])

/** The detail that a value fills; undefined where the command takes none of its kind, or it is filled already. */
export function slotFor(
  candidate: Candidate,
  { options }: CommandWords,
  isFilled: (option: string) => boolean,
): OptionWords | undefined {
  const { kind, text, cue = '', next = '', device } = candidate
  const free = (option: OptionWords | undefined) => (option && !isFilled(option.name) ? option : undefined)
  const named = (name: string) => free(options.find(option => option.name === name))
  if (device && (kind === 'state' || kind === 'voltage')) {
    const reading = named(device === 'charger' ? 'shown' : 'measured')
    if (reading) return reading
  }
  if (kind === 'count' && candidate.next === 'boards' && named('boards')) return named('boards')
  if (kind === 'state')
    return stateSlot(
      candidate,
      named,
      kindOf => free(options.find(o => o.kind === kindOf)),
      options.some(({ name }) => name === 'duration'),
    )
  if ((kind === 'current' || kind === 'rate') && endCues.has(cue)) return named('until')
  const isBled = cue === 'balance' || /^balanc/.test(next) || (bleeds.test(text) && !named('current'))
  if (kind === 'percent' && cue === keeps) return named('leave')
  if (kind === 'current' && isBled && named('balance')) return named('balance')
  // "My bench supply": of which nothing is told.
  if (kind === 'source' && /^(?:supply|usb(?:-c)?)$/i.test(text)) return undefined
  if (kind === 'board' || kind === 'batch') return /\d/.test(text) ? (named('places') ?? named('ports')) : undefined
  if (kind === 'clock') return timeOfDay.test(text) ? free(clockSlot(cue, options)) : undefined
  if (kind === 'count' && people.test(candidate.next ?? '')) return undefined
  if (kind === 'duration' && past.has(candidate.next ?? '')) return undefined
  const kinds = readers[kind] ?? []
  const slot =
    named(kind) ??
    kinds
      .map(wanted =>
        free(options.find(({ kind: of, name }) => of === wanted && !toldByName.has(name) && !isFilled(name))),
      )
      .find(option => option !== undefined)
  // So long it was flown: no time that a charge has.
  return slot?.name === 'within' && flown.test(cue) ? undefined : slot
}

/** What is only told to be now starts nothing that has a detail for what the clock shows. */
function clockSlot(cue: string, options: CommandWords['options']): OptionWords | undefined {
  const ofClock = (name: string) => options.find(option => option.name === name && option.kind === 'clock')
  const [now, at] = [ofClock('now'), ofClock('at')]
  if (now && at) return cue === 'now' ? now : at
  return ofClock(cue === 'start' || cue === 'now' ? 'start' : 'ready')
}

/** Where LiFe is full other cells may stand. */
const fullCells = /^(?:4\.20?|4\.35)V per cell$/

/** A state behind "to" is where it goes; so are storage and full, unless they say where it stands. */
function stateSlot(
  { cue = '', text, typed, remains }: Candidate,
  named: (name: string) => OptionWords | undefined,
  ofKind: (kind: string) => OptionWords | undefined,
  isOfFlights: boolean,
): OptionWords | undefined {
  const isNamedGoal = text === 'storage' || text === 'full'
  const stands = cue === 'from' || cue === 'at' || cue === 'down'
  // "So 4.35 a cell it is": full volts that nobody read off say where the charge ends.
  const isEnd = cue === '' && fullCells.test(text) && /cell$/i.test(typed)
  // Of a flight a share is what may be used or what stays, unless it is told as a start.
  const isGoal =
    text !== 'empty' &&
    ((isOfFlights && text.endsWith('%') && !stands && !remains) ||
      goalCues.has(cue) ||
      isEnd ||
      (isNamedGoal && !stands))
  const at = () => {
    const option = named('at')
    return option?.kind === 'clock' ? undefined : option
  }
  const start = () => named('from') ?? ofKind('from') ?? at()
  if (!isGoal) return start()
  // Where it is to go is never taken for where it stands.
  return named('to') ?? (goalCues.has(cue) ? at() : start())
}

/**
 * Goals that are told as such come first, where there is a detail for them: what stands beside them is where the pack
 * stands. Where a number says that, a word does not: "how full is 3.8".
 */
export function goalsFirst(values: readonly Candidate[], { options }: CommandWords): readonly Candidate[] {
  const takesGoal = options.some(({ name }) => name === 'to')
  const rank = (value: Candidate): number => {
    if (value.kind !== 'state') return 1
    if (isToldGoal(value)) return takesGoal ? 0 : 3
    return /\d/.test(value.text) ? 1 : 2
  }
  return values.toSorted((a, b) => rank(a) - rank(b))
}

export const isToldGoal = ({ kind, cue = '' }: Candidate): boolean => kind === 'state' && goalCues.has(cue)

/** Where a charger ends by itself, and no rate that anybody may charge with. */
export const isEnd = ({ kind, cue = '', text }: Candidate): boolean =>
  kind === 'until' || (kind === 'rate' && endCues.has(cue) && text.startsWith('C/'))
