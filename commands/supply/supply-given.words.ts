// What a supply gives a charger, in words.

import type { Feed } from '../../src/charging/setting/input.ts'
import type { Setting } from '../../src/charging/setting/setting.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import type { Chargers, Demand } from '../../src/charging/sources/load.ts'
import { type Carried, plainCable_A } from '../../src/charging/sources/supply.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency, efficiencyOf } from '../../src/charging/things/practice.ts'
import type { Source } from '../../src/charging/things/source.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { sourceKind } from '../../src/language/kinds/values.ts'
import { cite, settingWorking } from '../shared/setting.words.ts'
import { sourceWorking } from '../shared/source.words.ts'

interface Given {
  readonly feed: Feed
  readonly carried: readonly Carried[]
  readonly load: Chargers
  /** Of a pack, or of cells with a current, that were named. */
  readonly demand: Demand | undefined
  readonly mostAtOnce: number | undefined
  readonly usable_Wh: number | undefined
  readonly taken_W: number | undefined
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
  given: Given,
  { source }: { readonly source?: Source | undefined },
  locale: Locale,
): readonly (Text | undefined)[] => {
  const most = given.demand ? undefined : atMost(given.carried, given.load.count, locale)
  // Of cells that were told it is what was asked.
  const isOfCells = given.carried.length === 1
  return [
    isOfCells ? most : undefined,
    enoughWords(given, locale),
    source && gives(source, given.feed, locale),
    lastsWords(given, locale),
    isOfCells ? undefined : most,
  ]
}

function gives(source: Source, { offer, power_W, current_A, lowest_V }: Feed, { say, show, own }: Locale): Text {
  const name = own(sourceKind.write(source))
  if (offer && lowest_V !== undefined && lowest_V < offer.voltage_V)
    return say`${name} gives ${show.power(power_W)} behind that lead: ${show.voltage(lowest_V)} at its ${show.current(current_A ?? offer.current_A)}.`
  if (offer)
    return say`${name} gives ${show.power(power_W)} here: ${show.voltage(offer.voltage_V)} and up to ${show.current(offer.current_A)}.`
  return current_A === undefined || lowest_V === undefined
    ? say`${name} gives at least ${show.power(power_W)}.`
    : say`${name} gives at least ${show.power(power_W)}: ${show.current(current_A)} at ${show.voltage(lowest_V)} or more.`
}

/** Whether it carries what was named: packs at a current, or chargers at the watts on their labels. */
function enoughWords(given: Given, locale: Locale): Text | undefined {
  if (given.demand) return packsWords(given, given.demand, locale)
  return given.load.flatOut_W === undefined ? undefined : flatOutWords(given, given.load.flatOut_W, locale)
}

function packsWords(
  { feed, load, permit, mostAtOnce = 1 }: Given,
  { current_A, input_W }: Demand,
  locale: Locale,
): Text {
  const { say, show, own } = locale
  const { pack, charger } = permit.situation
  const efficiency = efficiencyOf(charger)
  const each = load.count === 1 ? say`` : say` each`
  const drawn =
    feed.offer || feed.lowest_V === undefined
      ? say``
      : say` (${show.current(input_W / feed.lowest_V)} at ${show.voltage(feed.lowest_V)})`
  const takes = say`${show.current(current_A)} into ${own(`${pack.series}S`)}${each} takes ${show.power(Math.ceil(input_W))}${drawn}`
  const given_W = show.power(Math.floor(feed.power_W))
  if (input_W <= feed.power_W + 1e-9) {
    const most = mostAtOnce > 1 ? say`; up to ${show.number(mostAtOnce, 0)} such charges at once` : say``
    return say`Yes: ${takes} of the ${given_W} that it gives${most}.`
  }
  const held_W = (feed.power_W * efficiency) / load.count
  return say`No: ${takes}, and it gives ${given_W}. That is enough for ${show.current(Math.floor((held_W / pack.chemistry.full_V.value / pack.series) * 100) / 100)}${each}.`
}

/** What each may put out, or all of them, where it does not carry them. */
function flatOutWords({ feed, load, permit, mostAtOnce }: Given, all_W: number, { say, show }: Locale): Text {
  const { count, isAlike } = load
  const efficiency = efficiencyOf(permit.situation.charger)
  const takes = show.power(Math.ceil(all_W))
  const gives_W = show.power(Math.floor(feed.power_W))
  if (mostAtOnce !== undefined && mostAtOnce > 1) {
    return say`Yes: it carries up to ${show.number(mostAtOnce, 0)} of them flat out, which take ${takes} each of its ${gives_W}.`
  }
  const whole =
    count === 1
      ? say`flat out the charger takes ${takes}`
      : isAlike
        ? say`flat out ${show.number(count, 0)} of them take ${takes}`
        : say`flat out they take ${takes} together`
  if (all_W <= feed.power_W + 1e-9) {
    return mostAtOnce === 1
      ? say`Yes: ${whole} of its ${gives_W}; a second one would be too much.`
      : say`Yes: ${whole} of its ${gives_W}.`
  }
  const held = show.power(Math.floor((feed.power_W * efficiency) / (isAlike ? count : 1)))
  return count === 1
    ? say`No: ${whole}, and it gives ${gives_W}. Hold it to ${held} into the pack.`
    : isAlike
      ? say`No: ${whole}, and it gives ${gives_W}. Hold each to ${held} into its pack.`
      : say`No: ${whole}, and it gives ${gives_W}. Hold them to ${held} into the packs together.`
}

/** What a source that is drained holds, and for how long. */
function lastsWords({ feed, usable_Wh, taken_W }: Given, { say, show }: Locale): Text | undefined {
  if (usable_Wh === undefined) return undefined
  const energy = show.energy(Math.floor(usable_Wh))
  return taken_W === undefined
    ? say`In all it can give about ${energy}.`
    : say`In all it can give about ${energy}: ${show.roughly((usable_Wh * 3600) / Math.min(taken_W, feed.power_W))} of that.`
}

function atMost(carried: readonly Carried[], count: number, { say, show, own }: Locale): Text | undefined {
  if (carried.length === 0) return undefined
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
  const efficiency = efficiencyOf(charger)
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
