// Makes one source of the parts that were read, or says what is missing or does not fit together.

import type { Offer, Source } from '../../charging/things/source.ts'
import { pdOffers } from '../../charging/things/usb-pd.ts'
import { shortened } from '../../ground/plain-text.ts'
import { Problem } from '../../ground/problem.ts'
import { checked } from '../quantities/quantity.ts'
import type { Wanted } from '../scan/number.ts'
import { leadRest, type SourceDraft } from './source-parts.ts'

export const wantedSource: Wanted = {
  expected: 'a USB PD supply, volts with amps or watts, a vehicle outlet, a power bank or a battery',
  example: 'PD 65W',
}
const powerDelivery = { phrase: 'a USB PD power', min: 5, max: 240, example: 'PD 65W' }
/** The voltage of its cells that a power bank's mAh are counted at: common practice. */
const bankCell_V = 3.7
const usb_V = 5

/** Throws a Problem that quotes `text`; what is taken for granted is added to `assumed`. */
export function sourceOf(draft: SourceDraft, text: string, assumed: string[]): Source {
  if (draft.kind === 'vehicle' || (draft.deepCycle && !draft.kind)) return vehicleOf(draft, text, assumed)
  if (draft.kind === 'power bank') return bankOf(draft, text, assumed)
  if (draft.energy_Wh ?? draft.capacity_Ah ?? draft.engine ?? draft.rest_V) {
    throw refusal(text, 'I cannot tell what kind of source that is.', 'power bank 74Wh, or car 10A')
  }
  const supply = supplyOf(draft, text, assumed)
  if (supply) return { kind: 'supply', ...supply }
  throw refusal(text, 'That source lacks its volts and amps.', '12V 5A')
}

export interface Supply {
  readonly offers: readonly Offer[]
  readonly usbPd_W?: number
}

/** Undefined where nothing is said of what it gives; throws where that does not add up to one supply. */
function supplyOf(draft: SourceDraft, text: string, assumed: string[]): Supply | undefined {
  const { usb, offers, voltage_V = usb_V, current_A = 0, power_W = 0 } = draft
  const mayBePd = usb === 'PD' || usb === 'USB-C'
  const fields = ['offers', 'voltage_V', 'current_A', 'power_W'] as const
  const given = fields.filter(field => draft[field] !== undefined).join(' ')
  if (given === '' && usb === undefined) return undefined
  if (given === 'offers' && offers) return { offers }
  if (given === 'voltage_V current_A') return { offers: [{ voltage_V, current_A }] }
  if (given === 'power_W' && mayBePd) {
    if (usb === 'USB-C') assumed.push('a USB-C supply named by its watts is read as USB Power Delivery')
    const usbPd_W = checked(power_W, `${power_W}W`, 'power', powerDelivery)
    return { offers: pdOffers(usbPd_W), usbPd_W }
  }
  if (given === 'current_A' && usb !== undefined && usb !== 'PD') {
    assumed.push(`plain USB is taken to give ${usb_V} V`)
    return { offers: [{ voltage_V: usb_V, current_A }] }
  }
  if (given.includes(' ')) throw refusal(text, 'That does not add up to one supply.', wantedSource.example)
  throw refusal(
    text,
    'That source lacks its current or power.',
    given === 'voltage_V' ? `${voltage_V}V 5A` : wantedSource.example,
  )
}

function vehicleOf(draft: SourceDraft, text: string, assumed: string[]): Source {
  const { offers: [offer, second] = [], capacity_Ah, engine = 'off' } = draft
  const fuse_A = draft.current_A ?? offer?.current_A
  const volts = draft.voltage_V ?? offer?.voltage_V
  if (fuse_A === undefined) {
    throw refusal(text, "I need the rating of the outlet's fuse.", 'car 10A engine off')
  }
  const tooMuch = second ?? draft.usb ?? draft.power_W ?? draft.energy_Wh ?? (offer && draft.current_A)
  if (tooMuch !== undefined)
    throw refusal(text, 'That does not add up to one vehicle outlet.', 'car 10A engine off')
  if (draft.engine === undefined) assumed.push('the engine is taken to be off')
  const nominal = volts === 12 || volts === 24
  if (nominal) assumed.push(`${volts} V is read as the outlet's nominal voltage`)
  if (volts !== undefined && !nominal) checked(volts, `${volts}V`, 'voltage', leadRest)
  const rest_V = draft.rest_V ?? (nominal ? undefined : volts)
  return {
    kind: 'vehicle outlet',
    fuse_A,
    engine,
    battery: draft.deepCycle && 'deep-cycle',
    ...(volts === 24 && { nominal_V: 24 }),
    rest_V,
    capacity_Ah,
  }
}

function bankOf(draft: SourceDraft, text: string, assumed: string[]): Source {
  const { energy_Wh, capacity_Ah = 0, bare } = draft
  if (energy_Wh === undefined && capacity_Ah === 0) {
    throw refusal(text, 'I need the watt-hours on the power bank.', 'power bank 74Wh')
  }
  if (draft.engine ?? draft.rest_V ?? draft.deepCycle)
    throw refusal(text, 'That does not add up to one power bank.', 'power bank 74Wh')
  if (bare !== undefined) assumed.push(`${bare} is read as mAh`)
  if (energy_Wh === undefined) {
    assumed.push(`the power bank's mAh are counted at ${bankCell_V} V, the voltage of its cells`)
  } else if (capacity_Ah > 0) {
    assumed.push("the power bank's watt-hours count, its mAh are not used")
  }
  const label_Wh = energy_Wh ?? Number((capacity_Ah * bankCell_V).toPrecision(12))
  return { kind: 'power bank', label_Wh, ...supplyOf(draft, text, assumed) }
}

function refusal(text: string, what: string, example: string): Problem {
  return new Problem({ what, token: shortened(text), expected: wantedSource.expected, example })
}
