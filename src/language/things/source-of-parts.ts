// Makes one source of the parts that were read, or says what is missing or does not fit together.

import { boostShare, powerBankEfficiency } from '../../charging/things/practice.ts'
import type { Offer, Source } from '../../charging/things/source.ts'
import { pdOffers } from '../../charging/things/usb-pd.ts'
import type { Said } from '../../ground/locale.ts'
import { problemAt } from '../../ground/plain-text.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { isLead, type Pair, type SourceDraft, usb_V } from '../parts/source-draft.ts'
import { checked } from '../quantities/quantity.ts'
import * as texts from './source.words.ts'

export const wantedSource: Wanted = { expected: texts.aSource, example: 'PD 65W' }
const powerDelivery = { phrase: texts.usbPdPhrase, min: 5, max: 240, example: 'PD 65W' }
/** The voltage of its cells that a power bank's mAh are counted at: common practice. */
export const bankCell_V = 3.7
/** The car socket of a power station: common practice. */
const stationOffer: Offer = { voltage_V: 12, current_A: 10 }
/** Of the outlets of cars, where nothing is said: common practice. */
const usualFuse_A = 10
/** Of a lead clipped to a battery, where nothing is said: common practice. */
const usualClips_A = 30

const supplyVolts = { phrase: texts.supplyPhrase, min: 2, max: 60, example: '20V 5A' }
const drawn = { phrase: texts.powerPhrase, max: 200, example: '12V 120W' }
const leadRest = { phrase: texts.leadRestPhrase, min: 8, max: 30, example: '12.6V' }

/** Throws a Problem that quotes `text`; what is taken for granted is added to `assumed`. */
export function sourceOf(draft: SourceDraft, text: string, assumed: Said[]): Source {
  const { kind, watts } = draft
  if (isLead(draft)) return vehicleOf(draft, text, assumed)
  if (kind === 'bank' || kind === 'station') return bankOf(draft, text, assumed)
  if (kind === 'mains' || kind === 'panel') return wattsOf(draft, text, kind)
  if (draft.energy_Wh ?? draft.capacity_Ah ?? draft.engine ?? draft.rest)
    throw refusal(text, texts.unknownKind, 'power bank 74Wh')
  const others = draft.offers ?? draft.volts ?? draft.amps ?? draft.usb
  if (kind === 'supply' && watts !== undefined && others === undefined)
    return { kind: 'watts', of: 'supply', power_W: watts }
  const supply = supplyOf(draft, text, assumed)
  if (supply) return { kind: 'supply', ...supply }
  throw refusal(text, texts.lacksVoltsAndAmps, '12V 5A')
}

export interface Supply {
  readonly offers: readonly Offer[]
  readonly usbPd_W?: number
}

/** Undefined where nothing is said of what it gives; throws where that does not add up to one supply. */
function supplyOf(draft: SourceDraft, text: string, assumed: Said[]): Supply | undefined {
  const { usb, offers = [], volts, amps, watts } = draft
  const given = (['volts', 'amps', 'watts'] as const).filter(field => draft[field] !== undefined).join(' ')
  if (given === '' && usb === undefined) return undefined
  if (given === 'volts amps' || (given === 'volts watts' && usb !== 'pd'))
    return { offers: [...offers, { volts, amps, watts }].map(offerOf).sort((a, b) => a.voltage_V - b.voltage_V) }
  if (watts !== undefined && given === 'watts' && (usb === 'pd' || usb === 'usb-c')) {
    if (usb === 'usb-c') assumed.push(texts.asPowerDelivery)
    const usbPd_W = checked(watts, `${watts}W`, 'power', powerDelivery)
    return { offers: pdOffers(usbPd_W), usbPd_W }
  }
  if (amps !== undefined && given === 'amps' && usb !== undefined && usb !== 'pd') {
    assumed.push(texts.plainUsbGives(usb_V))
    return { offers: [{ voltage_V: usb_V, current_A: amps }] }
  }
  if (offers.length > 0 || given.includes(' ')) throw refusal(text, texts.notOneSupply, wantedSource.example)
  throw refusal(text, texts.lacksCurrentOrPower, given === 'volts' ? `${volts}V 5A` : wantedSource.example)
}

function offerOf({ volts, amps, watts = 0 }: Pair): Offer {
  const token = `${volts}V ${amps === undefined ? `${watts}W` : `${amps}A`}`
  const voltage_V = checked(Number(volts), token, 'voltage', supplyVolts)
  const drawn_A = Number((watts / voltage_V).toPrecision(4))
  return { voltage_V, current_A: amps ?? checked(drawn_A, token, 'current', drawn) }
}

/** What feeds the thing that feeds the charger: its watts decide, whatever its volts. */
function wattsOf({ watts, ...draft }: SourceDraft, text: string, of: 'mains' | 'panel'): Source {
  const more = draft.usb ?? draft.volts ?? draft.amps ?? draft.energy_Wh ?? draft.capacity_Ah ?? draft.engine
  if (watts !== undefined && more === undefined) return { kind: 'watts', of, power_W: watts }
  throw refusal(text, of === 'mains' ? texts.needsSupplyBehind : texts.needsBatteryBehind, `${of} 1000W`)
}

function vehicleOf(draft: SourceDraft, text: string, assumed: Said[]): Source {
  const { kind, watts, capacity_Ah, engine = 'off' } = draft
  const volts = draft.volts === undefined ? undefined : Number(draft.volts)
  const isPair = volts !== undefined && draft.amps === undefined
  if (draft.usb ?? draft.energy_Wh ?? (isPair ? undefined : watts))
    throw refusal(text, texts.notOneOutlet, 'car 10A engine off')
  const amps = watts === undefined ? draft.amps : offerOf(draft).current_A
  // A lead battery that stands by itself starts no engine.
  const isDrained = kind === 'leisure' || (kind === 'lead' && draft.engine === undefined)
  const fuse_A = amps ?? (isDrained ? usualClips_A : usualFuse_A)
  if (amps === undefined) assumed.push(isDrained ? texts.clipsTaken(fuse_A) : texts.fuseTaken(fuse_A))
  if (isDrained && kind === 'lead') assumed.push(texts.startsNothing)
  if (draft.engine === undefined && !isDrained) assumed.push(texts.engineTakenOff)
  const nominal = volts === 12 || volts === 24
  if (nominal) assumed.push(texts.asNominal(volts))
  const rest_V = draft.rest === undefined ? (nominal ? undefined : volts) : Number(draft.rest)
  for (const told_V of [nominal ? undefined : volts, rest_V])
    if (told_V !== undefined) checked(told_V, `${told_V}V`, 'voltage', leadRest)
  return {
    kind: 'vehicle outlet',
    fuse_A,
    engine,
    battery: isDrained ? 'deep-cycle' : undefined,
    nominal_V: volts === 24 ? 24 : undefined,
    rest_V,
    capacity_Ah,
  }
}

function bankOf(draft: SourceDraft, text: string, assumed: Said[]): Source {
  const { energy_Wh, capacity_Ah = 0, bare } = draft
  if (draft.engine ?? draft.rest) throw refusal(text, texts.notOnePowerBank, 'power bank 74Wh')
  if (energy_Wh === undefined && capacity_Ah === 0) {
    const supply = supplyOf(draft, text, assumed)
    if (!supply) throw refusal(text, texts.needsWattHours, 'power bank 74Wh')
    assumed.push(texts.holdsEnough)
    return { kind: 'supply', ...supply }
  }
  if (bare !== undefined) assumed.push(texts.bareAsMilliampHours(bare))
  if (draft.rated && energy_Wh === undefined) {
    const label_Wh = inside_Wh(capacity_Ah * usb_V, draft)
    assumed.push(texts.toldAsItLeaves({ label_Wh, volts: usb_V }))
    return { kind: 'power bank', label_Wh, ...supplyOf(draft, text, assumed) }
  }
  if (energy_Wh === undefined) {
    assumed.push(texts.countedAt(bankCell_V))
  } else if (capacity_Ah > 0) {
    assumed.push(texts.wattHoursCount)
  }
  if (draft.kind === 'station' && draft.volts === undefined && draft.usb === undefined) {
    assumed.push(texts.stationSocket(stationOffer))
    return { kind: 'power bank', label_Wh: stored_Wh(draft), offers: [stationOffer] }
  }
  return { kind: 'power bank', label_Wh: stored_Wh(draft), ...supplyOf(draft, text, assumed) }
}

/** What its cells hold of which so much leaves at the volts of USB: less where it feeds with more volts. */
function inside_Wh(left_Wh: number, { usb, volts, watts }: SourceDraft): number {
  const isBoosted = usb === 'pd' || usb === 'usb-c' || watts !== undefined || Number(volts ?? usb_V) > usb_V
  return Number(((left_Wh * (isBoosted ? boostShare.value : 1)) / powerBankEfficiency.value).toPrecision(4))
}

const stored_Wh = ({ energy_Wh, capacity_Ah = 0 }: SourceDraft): number =>
  energy_Wh ?? Number((capacity_Ah * bankCell_V).toPrecision(12))

function refusal(text: string, what: Said, example: string): Problem {
  return problemAt(text, what, { expected: wantedSource.expected, example })
}
