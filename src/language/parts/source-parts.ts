// The parts that people tell a source by.

import { wordSet } from '../../ground/word-set.ts'
import type { Sentence } from '../candidates/sentence/sentence.ts'
import { decimalText } from '../candidates/sentence/written.ts'
import type { Measure } from '../quantities/measures.ts'
import { chemistryAt } from './chemistry.ts'
import { measured } from './draft.ts'
import { isLead, mayRest, type SourceDraft, usb_V } from './source-draft.ts'
import { engineEnd } from './source-engine.ts'
import { fillers, namedSource, type SourceKind, strength } from './source-words.ts'

/** Reads the part at this token and gives the token behind it. */
export function sourcePart(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  const told = engineEnd(sentence, at, draft) ?? restInDetail(sentence, at, draft)
  if (told !== undefined) return told
  const word = namedSource(sentence, at)
  // "12 V at the socket": where it hangs on, and none of mains.
  const isPlace = word?.kind === 'mains' && word.sure < 0.5 && (draft.kind ?? draft.volts) !== undefined
  if (word && !isPlace) {
    if (word.kind === 'usb' || word.kind === 'usb-c' || word.kind === 'pd') draft.usb = word.kind
    draft.kind = kindOf(word.kind, isPlaceAlone(draft) ? undefined : draft.kind)
    draft.sure = Math.max(draft.sure, word.sure)
    return word.after
  }
  const rest = ratedEnd(sentence, at, draft) ?? restEnd(sentence, at, draft)
  if (rest !== undefined) return rest
  const figure = figureEnd(sentence, at, draft)
  if (figure !== undefined) return figure
  const run = chemistryAt(sentence, at)
  if (run && draft.chemistry === undefined) {
    draft.chemistry = run.name
    return run.after
  }
  // "A 1 kW petrol generator".
  const isNamed = (draft.kind ?? draft.chemistry) !== undefined || namedSource(sentence, at + 1) !== undefined
  return isNamed && fillers.has(sentence.word(at)) ? at + 1 : undefined
}

/** "Socket", "wall outlet": what hangs there may be anything. */
const isPlaceAlone = ({ kind, sure }: SourceDraft): boolean => kind === 'mains' && sure < 0.5

/** What says more stands; a lead battery of a vehicle starts its engine. */
function kindOf(named: SourceKind, told: SourceKind | undefined): SourceKind {
  if (told === undefined) return named
  const both = new Set([named, told])
  if (both.has('lead') && both.has('vehicle')) return 'starter'
  // "A lead bank" is one of a boat or a lorry.
  if (both.has('lead') && both.has('bank')) return 'leisure'
  // "A box with a gel battery": what stands in it feeds.
  if (both.has('lead') && both.has('station')) return 'lead'
  return strength[named] > strength[told] ? named : told
}

/** "12000 mAh at 5 V", "12000 mAh (5 V 3 A)": what leaves it, told at the volts of USB; with amps behind "at" they are its output. */
function ratedEnd(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  const volts = measured(sentence, at, 'voltage')
  const isStored = (draft.energy_Wh ?? draft.capacity_Ah) !== undefined && /^(?:m?ah|k?wh)$/.test(sentence.word(at - 2))
  if (!isStored || draft.volts !== undefined || volts?.value !== usb_V) return undefined
  const amps = measured(sentence, volts.after + (sentence.word(volts.after) === '/' ? 1 : 0), 'current')
  const isInBrackets = sentence.word(at - 1) === '('
  if (!isInBrackets && (amps !== undefined || !/^(?:at|@)$/.test(sentence.word(at - 1)))) return undefined
  draft.rated = true
  return amps?.after ?? volts.after
}

const stands = wordSet(
  "that which it it's its is was at rests rest resting stands standing sits reads reading shows showing says measures measured now only just still barely down to about around by the meter on",
)
const reads = wordSet('rests resting stands sits reads reading shows showing says measures measured down only meter')
const mostOfStanding = 6

/** "That rests at 12.1 V", "is down to 12.2": where a lead battery stands, and no pack. */
function restEnd(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  if (!isLead(draft) || draft.rest !== undefined) return undefined
  let next = at
  while (next < at + mostOfStanding && stands.has(sentence.word(next))) next += 1
  const volts = next > at ? voltsAt(sentence, next) : undefined
  if (!volts || !mayRest(Number(volts.decimal), draft.volts === '24')) return undefined
  // "It is 12 V": its kind, unless somebody read it off.
  const isRead = Array.from({ length: next - at }, (_, n) => sentence.word(at + n)).some(word => reads.has(word))
  if (/^(?:12|24)$/.test(volts.decimal) && !isRead) return undefined
  draft.rest = volts.decimal
  return volts.after
}

/** With their unit, or to a tenth. */
function voltsAt(sentence: Sentence, at: number): { readonly decimal: string; readonly after: number } | undefined {
  const measure = sentence.measures[at]?.find(({ dimension }) => dimension === 'voltage')
  if (measure) return { decimal: decimalText(measure.value), after: measure.after }
  const numeral = sentence.bareNumeral(at)
  return numeral?.decimal.includes('.') ? numeral : undefined
}

/** "Rest 12V": what a lead battery shows, whatever it is called and before it is named. */
function restInDetail(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  if (sentence.isTalk || !/^rest(?:ing)?$/.test(sentence.word(at)) || draft.rest !== undefined) return undefined
  if (!isLead(draft) && draft.kind !== undefined) return undefined
  const measure = measured(sentence, sentence.word(at + 1) === 'at' ? at + 2 : at + 1, 'voltage')
  if (measure) draft.rest = voltsOf(measure)
  return measure?.after
}

/** More is meant to be something else. */
const largest: Readonly<Partial<Record<Measure['dimension'], number>>> = {
  voltage: 60,
  current: 60,
  power: 10_000,
  energy: 10_000,
  capacity: 400,
}

function figureEnd(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  for (const measure of sentence.measures[at] ?? []) {
    if (sentence.isTalk && isOfWall(measure)) {
      draft.mains_V ??= measure.value
      return measure.after
    }
    const most = largest[measure.dimension]
    if (
      most === undefined ||
      (sentence.isTalk && measure.value > most) ||
      measure.value <= 0 ||
      measure.numeral.needsUnit
    )
      continue
    if (takeFigure(measure, draft)) return measure.after
  }
  return bareFigure(sentence, at, draft)
}

const voltsOf = ({ value, decimal }: Measure): string => (value === Number(decimal) ? decimal : decimalText(value))

/** "230 V 6 A": what a socket in a wall has anywhere. */
const isOfWall = ({ dimension, value }: Measure): boolean => dimension === 'voltage' && value >= 100 && value <= 250

function takeFigure(measure: Measure, draft: SourceDraft): boolean {
  const { dimension, value } = measure
  if (dimension === 'voltage') {
    const { offers = [], volts, amps, watts } = draft
    if (volts !== undefined && draft.rest !== undefined) return false
    // A socket that gives volts is none of mains.
    if (isPlaceAlone(draft)) delete draft.kind
    if (volts === undefined) draft.volts = voltsOf(measure)
    else if (isLead(draft) || (amps ?? watts) === undefined) draft.rest = voltsOf(measure)
    else
      Object.assign(draft, {
        offers: [...offers, { volts, amps, watts }],
        volts: voltsOf(measure),
        amps: undefined,
        watts: undefined,
      })
    return true
  }
  const field = fields[dimension]
  if (field === undefined || draft[field] !== undefined) return false
  draft[field] = value
  return true
}

const fields: Readonly<Partial<Record<Measure['dimension'], 'amps' | 'watts' | 'energy_Wh' | 'capacity_Ah'>>> = {
  current: 'amps',
  power: 'watts',
  energy: 'energy_Wh',
  capacity: 'capacity_Ah',
}

/** "pd 100", "power bank 20000", "car battery at 12.5". */
function bareFigure(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  const numeral = sentence.bareNumeral(at)
  if (!numeral) return undefined
  const { value, decimal, after } = numeral
  if (draft.kind === 'pd' && draft.watts === undefined && value >= 15 && value <= 240) draft.watts = value
  else if (isOfBank(sentence, after, draft) && draft.capacity_Ah === undefined && value >= 2000 && value <= 60_000) {
    draft.capacity_Ah = value / 1000
    draft.bare = decimal
  } else if (isLead(draft) && draft.rest === undefined && value > 10.5 && value < 15 && decimal.includes('.')) {
    draft.rest = decimal
  } else return undefined
  return after
}

/** "power bank 20000", "20000 power bank". */
const isOfBank = (sentence: Sentence, after: number, { kind }: SourceDraft): boolean =>
  kind === 'bank' || kind === 'station' || (kind === undefined && namedSource(sentence, after)?.kind === 'bank')
