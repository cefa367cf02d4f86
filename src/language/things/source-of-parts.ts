// Makes one source of the parts that were read, or says what is missing or does not fit together.

import type { Offer, Source } from '../../charging/things/source.ts'
import { pdOffers } from '../../charging/things/usb-pd.ts'
import type { Said } from '../../ground/locale.ts'
import { problemAt } from '../../ground/plain-text.ts'
import type { Problem, Wanted } from '../../ground/problem.ts'
import { checked } from '../quantities/quantity.ts'
import * as texts from './source.words.ts'
import { leadRest, type SourceDraft } from './source-parts.ts'

export const wantedSource: Wanted = { expected: texts.aSource, example: 'PD 65W' }
const powerDelivery = { phrase: texts.usbPdPhrase, min: 5, max: 240, example: 'PD 65W' }
/** The voltage of its cells that a power bank's mAh are counted at: common practice. */
export const bankCell_V = 3.7
/** What USB gives where no more volts are agreed on. */
export const usb_V = 5
/** The car socket of a power station: common practice. */
const stationOffer: Offer = { voltage_V: 12, current_A: 10 }
/** Of the outlets of cars, where nothing is said: common practice. */
const usualFuse_A = 10
/** Of a lead clipped to a battery, where nothing is said: common practice. */
const usualClips_A = 30

/** Throws a Problem that quotes `text`; what is taken for granted is added to `assumed`. */
export function sourceOf(draft: SourceDraft, text: string, assumed: Said[]): Source {
  if (draft.kind === 'vehicle' || ((draft.deepCycle ?? draft.lead) && !draft.kind))
    return vehicleOf(draft, text, assumed)
  if (draft.kind === 'power bank') return bankOf(draft, text, assumed)
  if (draft.kind !== undefined) return wattsOf(draft, text, draft.kind)
  if (draft.energy_Wh ?? draft.capacity_Ah ?? draft.engine ?? draft.rest_V) {
    throw refusal(text, texts.unknownKind, 'power bank 74Wh')
  }
  const { offers, voltage_V, current_A, power_W, usb } = draft
  const others = offers ?? voltage_V ?? current_A ?? usb
  if (draft.supply && power_W !== undefined && others === undefined) return { kind: 'watts', of: 'supply', power_W }
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
  const { usb, offers, voltage_V = usb_V, current_A = 0, power_W = 0 } = draft
  const mayBePd = usb === 'PD' || usb === 'USB-C'
  const fields = ['offers', 'voltage_V', 'current_A', 'power_W'] as const
  const given = fields.filter(field => draft[field] !== undefined).join(' ')
  if (given === '' && usb === undefined) return undefined
  if (given === 'offers' && offers) return { offers }
  if (given === 'voltage_V current_A') return { offers: [{ voltage_V, current_A }] }
  if (given === 'power_W' && mayBePd) {
    if (usb === 'USB-C') assumed.push(texts.asPowerDelivery)
    const usbPd_W = checked(power_W, `${power_W}W`, 'power', powerDelivery)
    return { offers: pdOffers(usbPd_W), usbPd_W }
  }
  if (given === 'current_A' && usb !== undefined && usb !== 'PD') {
    assumed.push(texts.plainUsbGives(usb_V))
    return { offers: [{ voltage_V: usb_V, current_A }] }
  }
  if (given.includes(' ')) throw refusal(text, texts.notOneSupply, wantedSource.example)
  throw refusal(text, texts.lacksCurrentOrPower, given === 'voltage_V' ? `${voltage_V}V 5A` : wantedSource.example)
}

/** What feeds the thing that feeds the charger: its watts decide, whatever its volts. */
function wattsOf({ power_W, ...draft }: SourceDraft, text: string, of: 'mains' | 'panel'): Source {
  const more = Object.keys(draft).length > 1
  if (power_W !== undefined && !more) return { kind: 'watts', of, power_W }
  throw refusal(text, of === 'mains' ? texts.needsSupplyBehind : texts.needsBatteryBehind, `${of} 1000W`)
}

function vehicleOf(draft: SourceDraft, text: string, assumed: Said[]): Source {
  const { offers: [offer, second] = [], capacity_Ah, engine = 'off' } = draft
  const told_A = draft.current_A ?? offer?.current_A
  // A lead battery that stands by itself starts no engine.
  const isDrained = draft.deepCycle ?? (draft.lead && draft.kind === undefined && draft.engine === undefined)
  const fuse_A = told_A ?? (isDrained ? usualClips_A : usualFuse_A)
  const volts = draft.voltage_V ?? offer?.voltage_V
  const tooMuch = second ?? draft.usb ?? draft.power_W ?? draft.energy_Wh ?? (offer && draft.current_A)
  if (tooMuch !== undefined) throw refusal(text, texts.notOneOutlet, 'car 10A engine off')
  if (told_A === undefined) assumed.push(isDrained ? texts.clipsTaken(fuse_A) : texts.fuseTaken(fuse_A))
  if (isDrained && !draft.deepCycle) assumed.push(texts.startsNothing)
  if (draft.engine === undefined && !isDrained) assumed.push(texts.engineTakenOff)
  const nominal = volts === 12 || volts === 24
  if (nominal) assumed.push(texts.asNominal(volts))
  if (volts !== undefined && !nominal) checked(volts, `${volts}V`, 'voltage', leadRest)
  const rest_V = draft.rest_V ?? (nominal ? undefined : volts)
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
  if (draft.engine ?? draft.rest_V ?? draft.deepCycle ?? draft.lead)
    throw refusal(text, texts.notOnePowerBank, 'power bank 74Wh')
  if (energy_Wh === undefined && capacity_Ah === 0) {
    const supply = supplyOf(draft, text, assumed)
    if (!supply) throw refusal(text, texts.needsWattHours, 'power bank 74Wh')
    assumed.push(texts.holdsEnough)
    return { kind: 'supply', ...supply }
  }
  if (bare !== undefined) assumed.push(texts.bareAsMilliampHours(bare))
  if (energy_Wh === undefined) {
    assumed.push(texts.countedAt(bankCell_V))
  } else if (capacity_Ah > 0) {
    assumed.push(texts.wattHoursCount)
  }
  if (draft.station && draft.offers === undefined && draft.usb === undefined) {
    assumed.push(texts.stationSocket(stationOffer))
    return { kind: 'power bank', label_Wh: stored_Wh(draft), offers: [stationOffer] }
  }
  return { kind: 'power bank', label_Wh: stored_Wh(draft), ...supplyOf(draft, text, assumed) }
}

const stored_Wh = ({ energy_Wh, capacity_Ah = 0 }: SourceDraft): number =>
  energy_Wh ?? Number((capacity_Ah * bankCell_V).toPrecision(12))

function refusal(text: string, what: Said, example: string): Problem {
  return problemAt(text, what, { expected: wantedSource.expected, example })
}
