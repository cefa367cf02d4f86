// Sources: `PD 65W`, `20V 5A`, `USB 5V 2A`, `car 10A`, `power bank 74Wh PD 45W`, or a battery as a pack is written.

import type { Source } from '../../charging/things/source.ts'
import type { Said } from '../../ground/locale.ts'
import { plainText } from '../../ground/plain-text.ts'
import type { SourceDraft } from '../parts/source-draft.ts'
import { sourcePart } from '../parts/source-parts.ts'
import { saysNothing } from '../parts/source-words.ts'
import { type Grammar, readWhole } from '../parts/whole.ts'
import { isLithium, writtenSource } from '../parts/written-source.ts'
import { writeQuantity } from '../quantities/quantity.ts'
import { shiftedDecimal } from '../scan/number.ts'
import type { Read } from '../scan/read.ts'
import { readBattery, writePack } from './pack.ts'
import { capacityPhrase } from './source.words.ts'
import { type Supply, sourceOf, wantedSource } from './source-of-parts.ts'

const batteryLike = /(?:^|[ ,;])\d+ ?-?s(?:\d+p)?(?![\p{L}\d])/iu

const grammar: Grammar<SourceDraft> = {
  part: (sentence, at, draft) =>
    sourcePart(sentence, at, draft) ?? (saysNothing.has(sentence.word(at)) ? at + 1 : undefined),
  figures: [
    ['voltage'],
    ['current'],
    ['power', { max: 10_000 }],
    ['energy'],
    ['capacity', { phrase: capacityPhrase, min: 0.2, max: 300, example: '20000mAh' }],
  ],
  wanted: wantedSource,
}

/**
 * Reads the whole text as one source. What it must assume (engine off, 3.7 V for a power bank's mAh) is in
 * `assumed`. Throws a Problem that names the word or says what is missing.
 */
export function readSource(text: string): Read<Source> {
  const plain = plainText(text)
  if (batteryLike.test(plain)) return batteryOf(plain)
  const draft: SourceDraft = { sure: 0 }
  readWhole(plain, grammar, draft)
  if (isLithium(draft) && draft.volts !== undefined) return batteryOf(writtenSource(draft))
  const assumed: Said[] = []
  const value = sourceOf(draft, plain, assumed)
  return { value, assumed }
}

function batteryOf(text: string): Read<Source> {
  const { value: pack, assumed } = readBattery(text)
  return { value: { kind: 'battery', pack }, assumed }
}

/** Canonical text; reading it gives the same source. */
export function writeSource(source: Source): string {
  if (source.kind === 'battery') return writePack(source.pack)
  if (source.kind === 'supply') return writeSupply(source)
  if (source.kind === 'power bank') {
    const bank = `power bank ${writeQuantity(source.label_Wh, 'energy')}`
    return source.offers ? `${bank} ${writeSupply({ ...source, offers: source.offers })}` : bank
  }
  if (source.kind === 'watts') return `${source.of} ${writeQuantity(source.power_W, 'power')}`
  const { fuse_A, engine, battery, nominal_V, rest_V, capacity_Ah } = source
  const isDrained = battery === 'deep-cycle' && engine === 'off'
  return [
    isDrained ? 'deep-cycle battery' : 'car',
    writeQuantity(fuse_A, 'current'),
    nominal_V !== undefined && writeQuantity(nominal_V, 'voltage'),
    !isDrained && `engine ${engine}`,
    battery === 'deep-cycle' && !isDrained && battery,
    rest_V !== undefined && `rest ${writeQuantity(rest_V, 'voltage')}`,
    capacity_Ah !== undefined && `${shiftedDecimal(capacity_Ah, 0)}Ah`,
  ]
    .filter(Boolean)
    .join(' ')
}

function writeSupply({ offers, usbPd_W }: Supply): string {
  if (usbPd_W !== undefined) return `PD ${writeQuantity(usbPd_W, 'power')}`
  return offers
    .map(({ voltage_V, current_A }) => `${writeQuantity(voltage_V, 'voltage')} ${writeQuantity(current_A, 'current')}`)
    .join(', ')
}
