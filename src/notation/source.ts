// Sources: `PD 65W`, `20V 5A`, `USB 5V 2A`, `car 10A`, `power bank 74Wh PD 45W`, or a battery as a pack is written.

import { Problem } from '../assistant/problem.ts'
import type { Offer, Source } from '../charging/source.ts'
import { pdOffers } from '../charging/usb-pd.ts'
import type { Wanted } from './number.ts'
import { readPack, writePack } from './pack.ts'
import { readParts, takeParts } from './parts.ts'
import { checked, writeQuantity } from './quantity.ts'
import type { Read } from './read.ts'
import { Scanner } from './scanner.ts'
import { leadRest, type SourceDraft, sourceParts } from './source-parts.ts'
import { plainText, shortened } from './text.ts'

const wanted: Wanted = {
  expected: 'a USB PD supply, volts with amps or watts, a vehicle outlet, a power bank or a battery',
  example: 'PD 65W',
}
const powerDelivery = { phrase: 'a USB PD power', min: 5, max: 240, example: 'PD 65W' }
/** The voltage of its cells that a power bank's mAh are counted at: common practice. */
const bankCell_V = 3.7
const usb_V = 5

const batteryLike = /(?:^|[ ,;])\d+ ?-?s(?:\d+p)?(?![\p{L}\d])/iu

/**
 * Reads the whole text as one source. What it must assume (engine off, 3.7 V for a power bank's mAh) is in
 * `assumed`. Throws a Problem that names the word or says what is missing.
 */
export function readSource(text: string): Read<Source> {
  const scan = new Scanner(plainText(text))
  if (batteryLike.test(scan.text)) {
    const { value: pack, assumed } = readPack(scan.text)
    return { value: { kind: 'battery', pack }, assumed }
  }
  const draft: SourceDraft = {}
  readParts(scan, sourceParts, draft, wanted)
  const assumed: string[] = []
  const value = sourceOf(draft, scan.text, assumed)
  return { value, assumed }
}

/** Moves past a source, complete or not, where one stands; a battery is left to the reader of packs. */
export function takeSource(scan: Scanner): boolean {
  const draft = scan.attempt(() => {
    const found: SourceDraft = {}
    takeParts(scan, sourceParts, found)
    return found.kind || found.usb || found.offers ? found : undefined
  })
  return draft !== undefined
}

function sourceOf(draft: SourceDraft, text: string, assumed: string[]): Source {
  if (draft.kind === 'vehicle') return vehicleOf(draft, text, assumed)
  if (draft.kind === 'power bank') return bankOf(draft, text, assumed)
  if (draft.energy_Wh ?? draft.capacity_Ah ?? draft.engine ?? draft.rest_V) {
    throw refusal(text, 'I cannot tell what kind of source that is.', 'power bank 74Wh, or car 10A')
  }
  const supply = supplyOf(draft, text, assumed)
  if (supply) return { kind: 'supply', ...supply }
  throw refusal(text, 'That source lacks its volts and amps.', '12V 5A')
}

interface Supply {
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
  if (given.includes(' ')) throw refusal(text, 'That does not add up to one supply.', wanted.example)
  throw refusal(
    text,
    'That source lacks its current or power.',
    given === 'voltage_V' ? `${voltage_V}V 5A` : wanted.example,
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
    ...(rest_V !== undefined && { rest_V }),
    ...(capacity_Ah !== undefined && { capacity_Ah }),
  }
}

function bankOf(draft: SourceDraft, text: string, assumed: string[]): Source {
  const { energy_Wh, capacity_Ah = 0, bare } = draft
  if (energy_Wh === undefined && capacity_Ah === 0) {
    throw refusal(text, 'I need the watt-hours on the power bank.', 'power bank 74Wh')
  }
  if (draft.engine ?? draft.rest_V)
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
  return new Problem({ what, token: shortened(text), expected: wanted.expected, example })
}

/** Canonical text; reading it gives the same source. */
export function writeSource(source: Source): string {
  if (source.kind === 'battery') return writePack(source.pack)
  if (source.kind === 'supply') return writeSupply(source)
  if (source.kind === 'power bank') {
    const bank = `power bank ${writeQuantity(source.label_Wh, 'energy')}`
    return source.offers ? `${bank} ${writeSupply({ ...source, offers: source.offers })}` : bank
  }
  const { fuse_A, engine, rest_V, capacity_Ah } = source
  const words = [`car ${writeQuantity(fuse_A, 'current')}`, `engine ${engine}`]
  if (rest_V !== undefined) words.push(`rest ${writeQuantity(rest_V, 'voltage')}`)
  if (capacity_Ah !== undefined) words.push(writeQuantity(capacity_Ah, 'capacity'))
  return words.join(' ')
}

function writeSupply({ offers, usbPd_W }: Supply): string {
  if (usbPd_W !== undefined) return `PD ${writeQuantity(usbPd_W, 'power')}`
  return offers
    .map(
      ({ voltage_V, current_A }) =>
        `${writeQuantity(voltage_V, 'voltage')} ${writeQuantity(current_A, 'current')}`,
    )
    .join(', ')
}
