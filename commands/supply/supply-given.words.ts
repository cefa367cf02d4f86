// What a supply gives a charger, in words.

import type { Feed } from '../../src/charging/setting/input.ts'
import type { Setting } from '../../src/charging/setting/setting.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import { type Carried, plainCable_A } from '../../src/charging/sources/supply.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
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
  /** What all chargers take at the watts on their labels, in W. */
  readonly flatOut_W: number | undefined
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

interface AskedOf {
  readonly source?: Source | undefined
  readonly charger?: Charger | undefined
  readonly count?: number | undefined
}

export const suppliedWords = (
  { feed, carried, flatOut_W }: Given,
  { source, charger, count = 1 }: AskedOf,
  locale: Locale,
): readonly (Text | undefined)[] => [
  source && gives(source, feed, locale),
  charger && flatOut_W !== undefined ? flatOutWords(feed, charger, count, flatOut_W, locale) : undefined,
  atMost(carried, count, locale),
]

function gives(source: Source, { offer, power_W }: Feed, { say, show, own }: Locale): Text {
  const name = own(sourceKind.write(source))
  return offer
    ? say`${name} feeds this with ${show.voltage(offer.voltage_V)} and up to ${show.current(offer.current_A)}, ${show.power(power_W)}.`
    : say`${name} feeds this with at least ${show.power(power_W)}.`
}

/** Whether it carries the chargers at the watts on their labels, and what each may put out where not. */
function flatOutWords(
  { power_W }: Feed,
  { efficiency = chargerEfficiency.value }: Charger,
  count: number,
  all_W: number,
  { say, show }: Locale,
): Text {
  const takes = show.power(Math.ceil(all_W))
  const whole =
    count === 1
      ? say`Flat out the charger takes ${takes}`
      : say`Flat out ${show.number(count, 0)} of them take ${takes}`
  if (all_W <= power_W) return say`${whole}: that is carried.`
  const held = show.power(Math.floor((power_W * efficiency) / count))
  return count === 1
    ? say`${whole}: more than that. Hold it to ${held} into the pack.`
    : say`${whole}: more than that. Hold each to ${held} into its pack.`
}

function atMost(carried: readonly Carried[], count: number, { say, show, own }: Locale): Text {
  const parts = carried.map(({ series, current_A }) =>
    current_A === undefined
      ? say`${own(`${series}S`)} not at all`
      : say`${own(`${series}S`)} ${show.current(current_A)}`,
  )
  const list = joined(parts, ', ')
  return count === 1 ? say`It carries at most: ${list}.` : say`It carries at most, on each charger: ${list}.`
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
  feed: Feed,
  { situation: { charger, pack, sourceShare_W = feed.power_W } }: Permit,
  locale: Locale,
): Text {
  const { say, show, own } = locale
  const power_W = Math.min(feed.power_W, sourceShare_W)
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
