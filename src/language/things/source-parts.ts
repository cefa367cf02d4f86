// The words that a source is made of.

import type { Offer } from '../../charging/things/source.ts'
import { checked, quantityOf, takeQuantity } from '../quantities/quantity.ts'
import { takeNumeral } from '../scan/number.ts'
import { once, type Part } from '../scan/parts.ts'
import type { Scanner } from '../scan/scanner.ts'
import { capacityPhrase, leadRestPhrase, powerPhrase, supplyPhrase } from './source.words.ts'

export interface SourceDraft {
  kind?: 'vehicle' | 'power bank' | 'mains' | 'panel'
  usb?: 'PD' | 'USB-C' | 'USB'
  /** Volts with amps, or with watts. */
  offers?: readonly Offer[]
  voltage_V?: number
  current_A?: number
  power_W?: number
  energy_Wh?: number
  capacity_Ah?: number
  engine?: 'running' | 'off'
  deepCycle?: true
  /** A lead-acid battery of which nobody said what it is made for. */
  lead?: true
  /** Called a battery, not only a car. */
  battery?: true
  /** Called a supply. */
  supply?: true
  /** A power bank with outlets of its own. */
  station?: true
  rest_V?: number
  /** A bare number, read as mAh on a power bank. */
  bare?: string
}

const supply = { phrase: supplyPhrase, min: 2, max: 60, example: '20V 5A' }
const ofPower = { phrase: powerPhrase, max: 200, example: '12V 120W' }
const capacity = { phrase: capacityPhrase, min: 0.2, max: 300, example: '20000mAh' }
export const leadRest = { phrase: leadRestPhrase, min: 8, max: 30, example: '12.6V' }
const pairing = /,? ?(?:[@/x]|at)? ?/iuy
const listing = / ?[,/+;] ?| (?:or|and) /iuy

/** Judged only once its amps or watts are there: alone, the volts may be a cell's. */
function takeOffer(scan: Scanner): Offer | undefined {
  const start = scan.at
  const offer = takePair(scan)
  if (offer) checked(offer.voltage_V, scan.text.slice(start, scan.at), 'voltage', supply)
  return offer
}

function takePair(scan: Scanner): Offer | undefined {
  const start = scan.at
  const voltage_V = takeQuantity(scan, 'voltage')
  if (voltage_V === undefined) return undefined
  scan.take(pairing)
  const current_A = takeQuantity(scan, 'current')
  if (current_A !== undefined) return { voltage_V, current_A }
  const power_W = takeQuantity(scan, 'power')
  if (power_W === undefined) return undefined
  const token = scan.text.slice(start, scan.at)
  const drawn_A = Number((power_W / voltage_V).toPrecision(4))
  return { voltage_V, current_A: checked(drawn_A, token, 'current', ofPower) }
}

function takeOffers(scan: Scanner): readonly Offer[] | undefined {
  const offers: Offer[] = []
  for (;;) {
    const offer = scan.attempt(() => {
      if (offers.length > 0 && !scan.take(listing)) return undefined
      return takeOffer(scan)
    })
    if (!offer) break
    offers.push(offer)
  }
  return offers.length > 0 ? offers.sort((a, b) => a.voltage_V - b.voltage_V) : undefined
}

const kinds: readonly (readonly [NonNullable<SourceDraft['kind']>, RegExp])[] = [
  ['power bank', /power ?-?bank(?!\p{L})/iuy],
  [
    'mains',
    /(?:generator|genny|genset|inverter|mains(?! (?:supply|adapt[eo]r|brick|psu)))(?: (?:outlet|socket))?(?!\p{L})/iuy,
  ],
  ['panel', /(?:solar )?panel(?!\p{L})/iuy],
  [
    'vehicle',
    /(?:(?:car|vehicle|cigarette lighter|van|truck)(?: (?:outlet|socket|battery))?|starter battery)(?!\p{L})/iuy,
  ],
]

const usbKinds: readonly (readonly [NonNullable<SourceDraft['usb']>, RegExp])[] = [
  ['PD', /(?:usb ?-? ?c? ?)?(?:pd|power delivery)(?!\p{L})/iuy],
  ['USB-C', /(?:usb ?-? ?c|type-c)(?!\p{L})/iuy],
  ['USB', /usb(?: ?-? ?a)?(?!\p{L})/iuy],
]

const engines: readonly (readonly ['running' | 'off', RegExp])[] = [
  ['running', /(?:with )?(?:the )?(?:engine|motor) (?:is )?(?:running|on)(?!\p{L})/iuy],
  ['off', /(?:with )?(?:the )?(?:engine|motor) (?:is )?(?:off|stopped)(?!\p{L})/iuy],
]

const suppliers = /(?:bench|laptop|power supply|supply|psu|adapt[eo]r|brick)(?!\p{L})/iuy
const sockets = /(?:wall|mains|outlet|socket|port)(?!\p{L})/iuy

const oneOf =
  <T>(words: readonly (readonly [T, RegExp])[]) =>
  (scan: Scanner): T | undefined =>
    words.find(([, pattern]) => scan.take(pattern))?.[0]

const bareCapacity: Part<SourceDraft> = (scan, draft) => {
  if (draft.kind !== 'power bank' || draft.capacity_Ah !== undefined) return false
  const numeral = scan.attempt(() => {
    const found = takeNumeral(scan)
    return found !== undefined && scan.take(/(?=[ ,;]|$)/y) ? found : undefined
  })
  if (numeral === undefined) return false
  draft.bare = numeral
  draft.capacity_Ah = quantityOf(numeral, 'mAh', 'capacity', capacity)
  return true
}

/** "60Ah car battery at 12.5V": where a lead-acid battery rests. */
const restAt: Part<SourceDraft> = (scan, draft) => {
  if (draft.rest_V !== undefined || !(draft.kind === 'vehicle' || draft.deepCycle || draft.lead)) return false
  const rest_V = scan.attempt(() => {
    if (!scan.take(/(?:at|@|is at) ?(?=\d)/iuy)) return undefined
    return takeQuantity(scan, 'voltage', leadRest) ?? takeBareRest(scan)
  })
  draft.rest_V = rest_V
  return rest_V !== undefined
}

/** `12.5`, which is nothing but volts where a battery rests. */
function takeBareRest(scan: Scanner): number | undefined {
  const numeral = scan.take(/[12]\d[.,]\d{1,2}(?=[ ,;]|$)/y)?.[0]
  return numeral === undefined ? undefined : quantityOf(numeral, 'V', 'voltage', leadRest)
}

const batteryWords = /^.* battery$/i

const kind: Part<SourceDraft> = (scan, draft) => {
  const start = scan.at
  if (draft.kind !== undefined) return false
  draft.kind = oneOf(kinds)(scan)
  if (draft.kind === 'vehicle' && batteryWords.test(scan.text.slice(start, scan.at))) draft.battery = true
  return draft.kind !== undefined
}

const station: Part<SourceDraft> = (scan, draft) => {
  if (draft.kind !== undefined || !scan.take(/(?:power )?station(?!\p{L})/iuy)) return false
  draft.kind = 'power bank'
  draft.station = true
  return true
}

export const sourceParts: readonly Part<SourceDraft>[] = [
  kind,
  station,
  once('usb', oneOf(usbKinds)),
  once('engine', oneOf(engines)),
  once('deepCycle', scan => (scan.take(/(?:deep[ -]?cycle|leisure)(?: battery)?(?!\p{L})/iuy) ? true : undefined)),
  once('lead', scan =>
    scan.take(/(?:(?:lead(?:[ -]acid)?|agm|gel) battery|lead[ -]acid|agm)(?!\p{L})/iuy) ? true : undefined,
  ),
  once('rest_V', scan => (scan.take(/rest(?:ing)?(?: at)? /iuy) ? takeQuantity(scan, 'voltage', leadRest) : undefined)),
  restAt,
  once('offers', takeOffers),
  once('energy_Wh', scan => takeQuantity(scan, 'energy')),
  once('power_W', scan => takeQuantity(scan, 'power', { max: 10_000 })),
  once('voltage_V', scan => takeQuantity(scan, 'voltage')),
  once('current_A', scan => takeQuantity(scan, 'current')),
  once('capacity_Ah', scan => takeQuantity(scan, 'capacity', capacity)),
  scan => scan.take(sockets) !== undefined,
  (scan, draft) => (scan.take(suppliers) ? Object.assign(draft, { supply: true }) : undefined) !== undefined,
  bareCapacity,
]
