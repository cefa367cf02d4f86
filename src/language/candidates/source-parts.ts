// The parts that people tell a source by, and the notation of what was told.

import { chemistryAt } from './chemistries.ts'
import type { Measure } from './measures.ts'
import { phrasesOf, type Sentence, wordSet } from './sentence.ts'
import { decimalText } from './written.ts'

type SourceKind =
  | 'vehicle'
  | 'lead'
  | 'bank'
  | 'station'
  | 'pd'
  | 'usb-c'
  | 'usb'
  | 'supply'
  | 'mains'
  | 'panel'

export interface SourceDraft {
  kind?: SourceKind
  /** How surely the words name a source, without any figure. */
  sure: number
  volts?: string
  rest?: string
  amps?: number
  watts?: number
  energy_Wh?: number
  capacity_Ah?: number
  engine?: 'off' | 'running'
  chemistry?: string
}

/** What each phrase says; the later kind of a run stands where it says more. */
const named: ReadonlyMap<string, readonly [SourceKind, number]> = new Map(
  (
    [
      [
        'vehicle',
        0.75,
        'cig lighter, cigarette lighter, lighter socket, car socket, car outlet, 12v socket, ciggy lighter, cig socket, car lighter, vehicle outlet, 12 v socket, cigarette socket',
      ],
      [
        'vehicle',
        0.25,
        'car, van, truck, vehicle, minibus, lorry, motorhome, kombi, estate, fourgon, coche, voiture',
      ],
      [
        'lead',
        0.7,
        "leisure battery, leisure batt, leisure, starter battery, starter, car battery, van battery, car's battery, deep cycle, lead battery, lead acid, lead - acid, lead gel, lead, agm, gel, gel battery, battery in car, battery in the car, battery of the car, boat battery, tractor battery, truck battery, buttery, batterie auxiliaire, camping battery, 12 v battery, inverter battery, caravan battery, motorbike battery, aku",
      ],
      ['bank', 0.8, 'power bank, powerbank, power - bank, powerbanks, bank'],
      ['station', 0.75, 'power station, powerstation, camping box, power box'],
      ['pd', 0.85, 'pd, usb pd, usb - c pd, usb c pd, power delivery, usb - pd'],
      ['usb-c', 0.75, 'usb c, usb - c, usbc, type c, type - c, usb type c'],
      ['usb', 0.6, 'usb, usb a, usb - a, usb socket, usb port, usb plug'],
      [
        'supply',
        0.7,
        'bench supply, power supply, psu, bench psu, lab supply, laboratory supply, supply, adapter, adaptor, ac adapter, wall wart, wall brick, wall thing, brick, laptop brick, laptop plug, laptop charger, laptop supply, alim, netzteil, zasilacz, wall plug, plug pack',
      ],
      ['supply', 0.3, 'laptop, plug, bench, wall, lab, workshop'],
      [
        'mains',
        0.7,
        'generator, genny, inverter, invertor, agregat, generador, groupe électrogène, clubhouse socket, mains, mains socket, genset',
      ],
      ['panel', 0.75, 'solar panel, panel, solar, folding panel, solar panels, panneau solaire'],
    ] as const
  ).flatMap(([kind, sure, phrases]) => phrases.split(', ').map(phrase => [phrase, [kind, sure]] as const)),
)
const phrases = phrasesOf(named.keys())
/** Words that say more of what is named already. */
const fillers = wordSet(
  'battery batteries batt socket outlet output power petrol diesel folding starter starts fuse fused new',
)

/** A battery is none where it is a thing of the model, a lead none where it is a wire. */
const notLead = wordSet(
  'balance charge charging main the a my this that test extension power second same wire jumper one its',
)

export function namedSource(
  sentence: Sentence,
  at: number,
): { kind: SourceKind; sure: number; after: number } | undefined {
  const after = sentence.phraseEnd(at, phrases)
  if (after === undefined) return undefined
  const phrase = sentence.tokens
    .slice(at, after)
    .map(({ word }) => word)
    .join(' ')
  const [kind, sure] = named.get(phrase) ?? ['supply', 0]
  if (phrase === 'lead' && notLead.has(sentence.word(at - 1))) return undefined
  return { kind, sure: phrase === 'lead' ? 0.4 : sure, after }
}

const strength: Readonly<Record<SourceKind, number>> = {
  supply: 0,
  usb: 1,
  'usb-c': 2,
  vehicle: 3,
  pd: 4,
  mains: 4,
  panel: 5,
  lead: 6,
  station: 7,
  bank: 8,
}

/** Reads the part at this token and gives the token behind it. */
export function sourcePart(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  const engine = engineEnd(sentence, at, draft)
  if (engine !== undefined) return engine
  const word = namedSource(sentence, at)
  if (word) {
    if (draft.kind === undefined || strength[word.kind] > strength[draft.kind]) draft.kind = word.kind
    draft.sure = Math.max(draft.sure, word.sure)
    return word.after
  }
  const figure = figureEnd(sentence, at, draft)
  if (figure !== undefined) return figure
  const run = chemistryAt(sentence, at)
  if (run && draft.chemistry === undefined) {
    draft.chemistry = run.name
    return run.after
  }
  return draft.kind !== undefined && fillers.has(sentence.word(at)) ? at + 1 : undefined
}

function engineEnd(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  if (!/^(?:engine|motor)$/.test(sentence.word(at)) || draft.engine !== undefined) return undefined
  const next = /^(?:is|was|turned|switched)$/.test(sentence.word(at + 1)) ? at + 2 : at + 1
  const state = sentence.word(next)
  if (!/^(?:off|stopped|on|running|idling)$/.test(state)) return undefined
  draft.engine = /^(?:off|stopped)$/.test(state) ? 'off' : 'running'
  draft.sure = Math.max(draft.sure, 0.5)
  draft.kind ??= 'vehicle'
  return next + 1
}

const largest: Readonly<Partial<Record<Measure['dimension'], number>>> = {
  voltage: 60,
  current: 60,
  power: 10_000,
  energy: 10_000,
  capacity: 400,
}

function figureEnd(sentence: Sentence, at: number, draft: SourceDraft): number | undefined {
  for (const measure of sentence.measures[at] ?? []) {
    const most = largest[measure.dimension]
    if (most === undefined || measure.value > most || measure.value <= 0 || measure.numeral.needsUnit)
      continue
    if (takeFigure(measure, draft)) return measure.after
  }
  const bare = bareFigure(sentence, at, draft)
  return bare
}

function takeFigure({ dimension, value, decimal }: Measure, draft: SourceDraft): boolean {
  if (dimension === 'voltage') {
    if (draft.volts !== undefined && draft.rest !== undefined) return false
    const volts = value === Number(decimal) ? decimal : decimalText(value)
    if (draft.volts !== undefined) draft.rest = volts
    else draft.volts = volts
    return true
  }
  const field = fields[dimension]
  if (field === undefined || draft[field] !== undefined) return false
  draft[field] = value
  return true
}

const fields: Readonly<
  Partial<Record<Measure['dimension'], 'amps' | 'watts' | 'energy_Wh' | 'capacity_Ah'>>
> = {
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
  else if (draft.kind === 'bank' && draft.capacity_Ah === undefined && value >= 2000 && value <= 60_000) {
    draft.capacity_Ah = value / 1000
  } else if (
    isLead(draft) &&
    draft.rest === undefined &&
    value > 10.5 &&
    value < 15 &&
    decimal.includes('.')
  ) {
    draft.rest = decimal
  } else return undefined
  return after
}

export const isLead = ({ kind, chemistry }: SourceDraft): boolean =>
  (kind === 'lead' || kind === 'vehicle') && (chemistry === undefined || chemistry === 'AGM')

const figures = (...words: readonly (string | false | undefined)[]): string => words.filter(Boolean).join(' ')

/** In notation, as far as it was told. */
export function writtenSource(draft: SourceDraft): string {
  const { kind, chemistry, volts, rest, amps, watts, energy_Wh, capacity_Ah, engine } = draft
  const ampsText = amps !== undefined && `${decimalText(amps)}A`
  const wattsText = watts !== undefined && `${decimalText(watts)}W`
  const capacityText = capacity_Ah !== undefined && `${decimalText(capacity_Ah)}Ah`
  const pair = figures(volts !== undefined && `${volts}V`, ampsText, amps === undefined && wattsText)
  if (chemistry !== undefined && chemistry !== 'AGM') return writtenLithium(draft)
  switch (kind) {
    case 'bank':
    case 'station': {
      const energy = energy_Wh !== undefined && `${decimalText(energy_Wh)}Wh`
      const output = amps !== undefined && volts !== undefined ? pair : wattsText && `PD ${wattsText}`
      const mAh = energy_Wh === undefined && capacity_Ah !== undefined && `${decimalText(capacity_Ah, 3)}mAh`
      return figures('power bank', energy, mAh, output)
    }
    case 'pd':
    case 'usb-c':
      return volts !== undefined && amps !== undefined ? `USB ${pair}` : figures('PD', wattsText)
    case 'usb':
      return watts !== undefined && watts > 15 && volts === undefined
        ? `PD ${wattsText}`
        : figures('USB', pair)
    case 'mains':
      return figures('generator', pair)
    case 'panel':
      return figures('solar panel', pair)
    case 'vehicle':
    case 'lead': {
      const isRest = rest === undefined && volts !== undefined && volts.includes('.')
      const rested = rest ?? (isRest ? volts : undefined)
      const nominal = volts !== undefined && Number(volts) === 24 && '24V'
      const word = kind === 'lead' || capacity_Ah !== undefined ? 'car battery' : 'car'
      const state = engine !== undefined && `engine ${engine}`
      return figures(word, nominal, ampsText, state, rested !== undefined && `rest ${rested}V`, capacityText)
    }
    default:
      return capacity_Ah === undefined
        ? pair
        : figures('car battery', rest !== undefined && `rest ${rest}V`, capacityText)
  }
}

/** "100ah lifepo 12v": a battery as a pack is written, its cells by its volts. */
function writtenLithium({ chemistry = '', volts = '12', capacity_Ah }: SourceDraft): string {
  const perCell = chemistry === 'LiFe' ? 3.2 : 3.6
  const series = Math.max(1, Math.round(Number(volts) / perCell))
  return figures(`${series}S`, capacity_Ah !== undefined && `${decimalText(capacity_Ah, 3)}mAh`, chemistry)
}
