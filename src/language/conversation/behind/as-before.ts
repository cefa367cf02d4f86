// Values that are told by the last question: a bare "11.7" behind volts, "800 W" of a generator, "no, 2200 mAh".

import { liFe } from '../../../charging/things/chemistries.ts'
import { attempt } from '../../../ground/problem.ts'
import { bestCover, type Candidate, candidatesOf, type ValueName } from '../../candidates/index.ts'
import type { Frame } from '../../frames/frame.ts'
import { ofLeadBattery } from '../../parts/source-draft.ts'
import { writeQuantity } from '../../quantities/quantity.ts'
import type { Kept } from '../../reading/fit.ts'
import { feedCues } from '../../reading/told/packs-told.ts'
import { asKept } from '../../reading/told/slots.ts'
import { capacityTold_Ah, namesPack, toldBy, toldIn } from '../../reading/told/told-pack.ts'
import type { CommandWords } from '../../sentence/vocabulary.ts'
import { readSource } from '../../things/source.ts'
import { bankCell_V } from '../../things/source-of-parts.ts'
import { withPartOfBefore } from '../heard/part-of-before.ts'
import { isOnlyValues } from './follow-up.ts'
import { asCurrent, ofItsLevel, ofItsRest, onlyNumber } from './number-behind.ts'

/** What a value is looked at beside. */
interface Beside {
  readonly text: string
  readonly command: CommandWords
  /** Details of the question before. */
  readonly before: Kept
}

/** The values of the text as they are meant behind a question with these details. */
export function asBefore(
  text: string,
  values: readonly Candidate[],
  command: CommandWords,
  frame: Frame,
): readonly Candidate[] {
  const before = withFeed(frame)
  const told = withPartOfBefore(text, values, frame).map(value => asCurrent(value, frame, text))
  const cells = toldIn(before.pack ?? '')?.series ?? 1
  // "And one of 65 W", "half sun", "one cell has 35": no count, no state and no pack of one cell.
  const isNone = ({ kind, typed, score, pack }: Candidate) =>
    (kind === 'count' && told.length > 1 && score < surely && /^ones?$/i.test(typed)) ||
    (kind === 'state' && score < surely) ||
    (pack?.series === 1 && pack.capacity_Ah === undefined && cells > 1 && !/^1s/i.test(typed))
  // Where volts are asked for as such they are those, unless they were read off something.
  const takesVolts = command.options.some(({ name }) => name === 'voltage') && isOnlyValues(text, told)
  return told
    .filter(value => !isNone(value))
    .map(
      value =>
        ofItsBack(value, text, before) ??
        ofItsRest(value, text, before) ??
        (takesVolts ? undefined : ofItsLevel(value, text, before)) ??
        ofItsKind(value, { text, command, before }) ??
        ofItsLabel(value, text, before) ??
        ofItsSource(value, text, before) ??
        value,
    )
}

/** What feeds may be told without a figure: "the battery of my car", of which nothing was worked with. */
function withFeed(frame: Frame): Kept {
  const { command, options } = frame.question
  if (command !== 'source' || options.source !== undefined) return options
  const named = bestCover(candidatesOf(frame.typed ?? '')).find(({ kind }) => kind === 'source')
  return named ? { ...options, source: named.text } : options
}

/** A count or a level less sure than this may be none. */
const surely = 0.3

const measured = /\b(?:took|takes?|put|went|back|measured|tested|really|actually|left|holds? only)\b/i

/** "Its 2200 mAh": of a pack that was told its label, unless somebody says that it was measured. */
function ofItsLabel(value: Candidate, text: string, { pack }: Kept): Candidate | undefined {
  const isLabel = value.kind === 'capacity' && pack !== undefined && !measured.test(text)
  return isLabel ? { ...value, kind: 'pack', pack: toldBy(value) } : undefined
}

const named = /\b(?:label|pack|battery|lipo|lihv|life|ion|mah (?:one|pack))\b/i

/** "Sorry, 2850", where so many mAh were put back: they are those. */
function ofItsBack(value: Candidate, text: string, { back }: Kept): Candidate | undefined {
  const { pack: _, ...others } = value
  const capacity_Ah = back === undefined || named.test(text) ? undefined : capacityTold_Ah(value)
  if (capacity_Ah === undefined) return undefined
  return { ...others, kind: 'capacity', text: writeQuantity(capacity_Ah, 'capacity') }
}

/** What a source is told by, of which a figure was missing. */
const ofSources: ReadonlySet<ValueName> = new Set(['power', 'current', 'voltage', 'energy', 'capacity'])
export const isSource = (text: string): boolean => attempt(() => readSource(text)) !== undefined

const isWorn =
  /\b(?:years? old|aged|worn|tired|of what it says|of (?:its|the) (?:label|rating|capacity)|(?:doubt|count|reckon)\b.{0,20}\b(?:left|of (?:it|that)))\b/i
/** "If the battery is only 80 % full": beside packs it is what feeds them. */
const feeds = /\b(?:source|bank|station|agm|leisure|lead|starter|battery)\b(?!.*\b(?:packs?|li\w+)\b)/i
/** "It's at half", "a third of what it says": packs are many, and what feeds is one. */
const [ofIt, ofThem] = [/\b(?:it|its|it's)\b/i, /\b(?:packs?|lipos?|they|them|their|each|all)\b/i]
/** "Only until it's at half", "if I leave a fifth": what feeds goes no lower. */
const staysFull =
  /\b(?:down to|until|till?|leav(?:e|ing)|keep(?:ing)?|stop(?:ping)? at|not? (?:below|under|lower than))\b/i
const [sourceWatts, sourceVolts] = [/\d+(?:\.\d+)?W\b/, /\d+(?:\.\d+)?V\b/]
const onlyWatts = /^[\d.]+W charger$/

/** "And with 65 W", where a source was told by its watts and no charger was told; "from a 4S 8000", where one was told. */
function ofItsSource(value: Candidate, text: string, { source, charger, voltage }: Kept): Candidate | undefined {
  if (source === undefined) return undefined
  // "And with the LiFe one": a battery of that type in the place of the lead battery, as large as that.
  const isOne =
    value.kind === 'chemistry' && /^ (?:one|type|kind|battery|leisure battery)\b/i.test(text.slice(value.end))
  const [leadAh] = (ofLeadBattery.test(source) && /\b[\d.]+Ah\b/.exec(source)) || []
  if (isOne && leadAh && value.text === liFe.name)
    return {
      kind: 'source',
      text: `4S ${leadAh} ${liFe.name}`,
      typed: value.typed,
      start: value.start,
      end: value.end,
      score: 1,
    }
  // "80 Ah": of a lead battery, whose other figures stay.
  const ofLead = /^lead battery ([\d.]+Ah)$/.exec(value.kind === 'source' ? value.text : '')?.[1]
  if (ofLead && ofLeadBattery.test(source)) return { ...value, text: `${source.replace(/ [\d.]+Ah/, '')} ${ofLead}` }
  // "Eight years old, a third of what it says": so much of its label.
  const share = value.kind === 'state' && isWorn.test(text) ? /^(\d+)%$/.exec(value.text)?.[1] : undefined
  if (share !== undefined && leadAh) {
    const worn_Ah = Number(((Number.parseFloat(leadAh) * Number(share)) / 100).toFixed(1))
    return { ...value, kind: 'source', text: source.replace(leadAh, `${worn_Ah}Ah`) }
  }
  if (value.kind === 'state' && value.text.endsWith('%')) {
    const before = text.slice(0, value.start)
    if (staysFull.test(before) || /^ ?(?:left|in it|remaining)\b/i.test(text.slice(value.end))) return asKept(value)
    if (feeds.test(before) || (ofIt.test(text) && !ofThem.test(text))) return { ...value, kind: 'percent' }
  }
  // "The 100 W one", "if it were 24 V": a figure of it that is told anew.
  const isPower =
    value.kind === 'power' || (charger === undefined && onlyWatts.test(value.text) && !/charg/i.test(value.typed))
  const figure = isPower ? sourceWatts : value.kind === 'voltage' && voltage === undefined ? sourceVolts : undefined
  const [told] = figure?.exec(value.text) ?? []
  if (figure?.test(source) && told) return { ...value, kind: 'source', text: source.replace(figure, told) }
  if (!isSource(source)) {
    const { kind, text, parts = [] } = value
    const whole = [source, ...(ofSources.has(kind) ? [text] : parts.map(part => part.text))].join(' ')
    if (isSource(whole)) return { ...value, kind: 'source', text: whole }
  }
  const { pack, ...others } = value
  return pack && namesPack(value) && value.cue !== 'with' && feedCues.has(value.cue ?? '')
    ? { ...others, kind: 'source' }
    : undefined
}

/** How far a number may lie from the one whose place it takes: volts lie near, others may be doubled twice. */
const nearVolts = 1.4
const near = 4
const leading = /^\d+(?:\.\d+)?/
/** Of each kind of detail, the value that a bare number is, and the number in it that it stands for. */
const kinds: Readonly<Record<string, readonly [ValueName, RegExp]>> = {
  from: ['state', leading],
  to: ['state', leading],
  current: ['current', leading],
  power: ['power', leading],
  temperature: ['temperature', leading],
  resistance: ['resistance', leading],
  'cell resistances': ['resistance', leading],
  voltage: ['voltage', leading],
  duration: ['duration', /^\d+(?=(?:min|h|s)$)/],
  length: ['length', leading],
  pack: ['pack', /\d+(?=mAh)/],
  source: ['source', /\d+(?:\.\d+)?(?=(?:W|mAh|Ah)\b)/],
  charger: ['charger', /\d+(?:\.\d+)?(?=W\b)/],
  'session chargers': ['charger', /\d+(?:\.\d+)?(?=W\b)/],
}
/** A power bank by the mAh on its label, as people tell it. */
const asLabelled = (source: string): string =>
  source.replace(
    /^(power bank) ([\d.]+)Wh/,
    (_, bank, energy_Wh) => `${bank} ${Math.round((1000 * energy_Wh) / bankCell_V)}mAh`,
  )
const ofVolts: ReadonlySet<ValueName> = new Set(['state', 'voltage'])
const bare: ReadonlySet<ValueName> = new Set(['number', 'count', 'voltage', 'current', 'pack', 'capacity'])

/** What a number counts stands behind it: "5 packs". */
const countsWhat = /^ (?!instead|then|now|please|pls|and|or|if|maybe|rather|too|in|on|for|at|with|is|but|so)\p{L}{3,}/iu

/** A bare number is of the kind of the detail that it lies nearest to; one without decimals may be a count. */
function ofItsKind(value: Candidate, { text, command, before }: Beside): Candidate | undefined {
  if (countsWhat.test(text.slice(value.end))) return undefined
  const isVolts = value.kind === 'voltage' && !onlyNumber.test(value.typed)
  const typed = isVolts ? (leading.exec(value.text)?.[0] ?? '') : value.typed.replace(',', '.')
  const isBare = bare.has(value.kind) && (isVolts || onlyNumber.test(value.typed)) && Number(typed) > 0
  if (!isBare || (value.kind === 'count' && command.options.some(({ kind }) => countable.has(kind)))) return undefined
  const [nearest] = command.options
    .flatMap(({ name, kind }) => {
      const text = kind === 'source' ? asLabelled(before[name] ?? '') : (before[name] ?? '')
      const [of, number] = kinds[kind] ?? []
      const [told] = number?.exec(text) ?? []
      if (told === undefined || of === undefined || number === undefined || (isVolts && !/V/.test(text))) return []
      const most = Math.log(ofVolts.has(of) && /V/.test(text) ? nearVolts : near)
      const between = Math.abs(Math.log(Number(typed) / Number(told)))
      // Shares and degrees may be any, where nothing lies nearer.
      const isAny = text.endsWith('%') ? Number.isInteger(Number(typed)) && Number(typed) <= 100 : of === 'temperature'
      const apart = isAny ? Math.min(between, most) : between
      return apart > most ? [] : [{ of, kind, text: text.replace(number, typed), apart }]
    })
    .toSorted((a, b) => a.apart - b.apart)
  if (!nearest || nearest.of === 'pack') return undefined
  const { pack: _, ...others } = value
  return { ...others, kind: nearest.of, text: nearest.text, ...(nearest.of === 'state' && { cue: nearest.kind }) }
}

const countable: ReadonlySet<string> = new Set(['count', 'packs', 'session packs'])
