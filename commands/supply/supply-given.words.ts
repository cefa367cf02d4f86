// What a supply gives a charger, in words.

import type { Feed } from '../../src/charging/setting/input.ts'
import type { Setting } from '../../src/charging/setting/setting.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { type Carried, plainCable_A } from '../../src/charging/sources/supply.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { sourceKind } from '../../src/language/kinds/values.ts'
import { cite, settingWorking } from '../shared/setting.words.ts'
import { sourceWorking } from '../shared/source.words.ts'

interface Given {
  readonly feed: Feed
  readonly carried: readonly Carried[]
  /** Where a pack was named. */
  readonly setting: Setting | undefined
  readonly permit: Permit
}

/** Whether what is taken hangs on a cable that is marked for 5 A. */
export const wantsFullCable = ({ offer }: Feed, source: Source | undefined): boolean =>
  offer !== undefined &&
  offer.current_A > plainCable_A.value &&
  source !== undefined &&
  'usbPd_W' in source &&
  source.usbPd_W !== undefined

export const suppliedWords = (
  { feed, carried }: Given,
  source: Source | undefined,
  locale: Locale,
): readonly (Text | undefined)[] => [source && gives(source, feed, locale), atMost(carried, locale)]

function gives(source: Source, { offer, power_W }: Feed, { say, show, own }: Locale): Text {
  const name = own(sourceKind.write(source))
  return offer
    ? say`${name} feeds this with ${show.voltage(offer.voltage_V)} and up to ${show.current(offer.current_A)}, ${show.power(power_W)}.`
    : say`${name} feeds this with at least ${show.power(power_W)}.`
}

function atMost(carried: readonly Carried[], { say, show, own }: Locale): Text {
  const parts = carried.map(({ series, current_A }) =>
    current_A === undefined
      ? say`${own(`${series}S`)} not at all`
      : say`${own(`${series}S`)} ${show.current(current_A)}`,
  )
  return say`It carries at most: ${joined(parts, ', ')}.`
}

export function suppliedWorking(
  { feed, carried, setting, permit }: Given,
  { pack }: { readonly pack?: Pack | undefined },
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say } = locale
  const { source } = permit.situation
  const [first] = carried
  return [
    offersLine(source, locale),
    ...sourceWorking(source, feed, locale),
    source && 'usbPd_W' in source && source.usbPd_W !== undefined
      ? say`Cable: ${cite(plainCable_A, locale)}.`
      : undefined,
    first && shareLine(first, feed, permit, locale),
    ...(setting && pack
      ? settingWorking(setting, pack, locale)
      : [
          say`This is what the supply carries. What a pack may take is for its label and chemistry to say: ask "current".`,
        ]),
  ]
}

/** How the current of one cell count came about. */
function shareLine(
  { series, cutoffPack_V }: Carried,
  { power_W }: Feed,
  { situation: { charger, pack } }: Permit,
  locale: Locale,
): Text {
  const { say, show, own } = locale
  const efficiency = charger?.efficiency ?? chargerEfficiency.value
  const name = own(`${series}S ${pack.chemistry.name}`)
  const into_A = (power_W * efficiency) / cutoffPack_V
  const share = say`${name} at its cutoff: ${show.power(power_W)} × ${show.number(efficiency, 2)} ÷ ${show.voltage(cutoffPack_V)} = ${show.current(into_A)}`
  const cited = charger?.efficiency === undefined ? say`${share} (${cite(chargerEfficiency, locale)})` : share
  return charger ? say`${cited}; then the steps and the power of the charger count.` : say`${cited}.`
}

/** All that the supply offers behind its cable, where there is a choice. */
function offersLine(source: Source | undefined, { say, show }: Locale): Text | undefined {
  const offers = source?.kind === 'supply' || source?.kind === 'power bank' ? (source.offers ?? []) : []
  if (offers.length < 2) return undefined
  const list = offers.map(offer => joined([show.voltage(offer.voltage_V), show.current(offer.current_A)]))
  return say`Offers: ${joined(list, ', ')}.`
}
