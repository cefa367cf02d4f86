// What a source gives a charger, in words: what was taken for granted, and how its power came about.

import type { Assumption } from '../../src/assistant/command.ts'
import type { Feed } from '../../src/charging/setting/input.ts'
import {
  leadAcidLimitsOf,
  leadAcidRate_C,
  leadAcidResistance_ohmAh,
  leadAcidRest,
  outletWiring_ohm,
  starterBlocks,
  starterCapacity_Ah,
  usualRest_V,
} from '../../src/charging/things/lead-acid.ts'
import {
  batterySourceRate_C,
  engineRunning_V,
  fuseShare,
  plainUsbOffer,
  powerBankEfficiency,
  wattsShare,
} from '../../src/charging/things/practice.ts'
import type { BatterySource, PowerBank, Source, VehicleOutlet, WattsSource } from '../../src/charging/things/source.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { cite } from './setting.words.ts'

const usbPd = 'USB Power Delivery Specification R3.x, power rules; IEC 62680-1-2:2022'

/** What had to be assumed about the source because the question did not say it. */
export function sourceAssumed(
  source: Source | undefined,
  locale: Locale,
  toldSoc?: number,
): readonly (Assumption | undefined)[] {
  const { say, show } = locale
  if (source?.kind === 'power bank' && !source.offers && source.usbPd_W === undefined) {
    const { voltage_V, current_A } = plainUsbOffer.value
    return [
      {
        text: say`the power bank is taken to give ${show.voltage(voltage_V)}, ${show.current(current_A)}`,
        from: cite(plainUsbOffer, locale),
      },
    ]
  }
  if (source?.kind === 'watts') return [wattsAssumed(source, locale)]
  if (source?.kind !== 'vehicle outlet' || source.engine === 'running') return []
  const { battery = 'starter' } = source
  const rest_V = usualRest_V[battery]
  return [
    source.rest_V === undefined && toldSoc === undefined
      ? {
          text: say`the lead battery is taken to rest at ${show.voltage(starterBlocks(source) * rest_V.value)}`,
          from: cite(rest_V, locale),
        }
      : undefined,
    source.capacity_Ah === undefined
      ? {
          text: say`the lead battery is taken to hold ${show.capacity(starterCapacity_Ah.value)}`,
          from: cite(starterCapacity_Ah, locale),
        }
      : undefined,
  ]
}

function wattsAssumed({ of }: WattsSource, { say }: Locale): Text {
  if (of === 'supply') return say`the volts of the supply are taken to lie inside the charger's input`
  return of === 'mains'
    ? say`between it and the charger stands a supply whose volts and watts suit the charger`
    : say`the sun is strong, and a battery or a power station stands between the panel and the charger`
}

/** How the power of the source came about. */
export function sourceWorking(
  source: Source | undefined,
  feed: Feed | undefined,
  locale: Locale,
): readonly (Text | undefined)[] {
  if (!source || !feed) return []
  return [offerLine(source, feed, locale), ...kindLines(source, feed, locale)]
}

function offerLine(source: Source, { offer }: Feed, { say, show, own }: Locale): Text | undefined {
  if (!offer) return undefined
  const taken = say`Offer taken: ${show.voltage(offer.voltage_V)} × ${show.current(offer.current_A)} = ${show.power(offer.voltage_V * offer.current_A)}`
  const most =
    source.kind === 'supply' && source.offers.length > 1
      ? say`${taken}, the most inside the input window of the charger`
      : taken
  return 'usbPd_W' in source && source.usbPd_W !== undefined ? say`${most} (${own(usbPd)}).` : say`${most}.`
}

function kindLines(source: Source, feed: Feed, locale: Locale): readonly (Text | undefined)[] {
  switch (source.kind) {
    case 'watts':
      return [wattsLine(source, feed, locale)]
    case 'supply':
      return []
    case 'power bank':
      return [bankLine(source, locale)]
    case 'vehicle outlet':
      return outletLines(source, feed, locale)
    case 'battery':
      return batteryLines(source, feed, locale)
  }
}

const wattsLine = ({ of, power_W }: WattsSource, { power_W: given_W }: Feed, locale: Locale): Text =>
  locale.say`Of its watts: ${locale.show.power(power_W)} × ${locale.show.number(wattsShare[of].value, 2)} = ${locale.show.power(given_W)} (${cite(wattsShare[of], locale)}).`

function bankLine({ label_Wh }: PowerBank, locale: Locale): Text {
  const { say, show } = locale
  const { value } = powerBankEfficiency
  return say`Usable: ${show.energy(label_Wh)} × ${show.number(value, 2)} = ${show.energy(label_Wh * value)} (${cite(powerBankEfficiency, locale)}).`
}

function outletLines(
  outlet: VehicleOutlet,
  { current_A = 0, lowest_V = 0, power_W, store }: Feed,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  const { fuse_A, engine, battery = 'starter', capacity_Ah = Number.POSITIVE_INFINITY } = outlet
  const { share, restFloor_V, loadFloor_V } = leadAcidLimitsOf(outlet)
  const what = battery === 'starter' ? say`Starter battery` : say`Deep-cycle battery`
  const fused_A = fuse_A * fuseShare.value
  return [
    say`Fuse: ${show.current(fuse_A)} × ${show.number(fuseShare.value, 1)} = ${show.current(fused_A)} (${cite(fuseShare, locale)}).`,
    capacity_Ah * leadAcidRate_C.value < fused_A ? say`Lead-acid battery: ${cite(leadAcidRate_C, locale)}.` : undefined,
    say`At ${show.voltage(lowest_V)} and ${show.current(current_A)} that is ${show.power(power_W)}.`,
    engine === 'running' ? say`Voltage: ${cite(engineRunning_V, locale)}.` : undefined,
    store &&
      say`${what}: ${show.percent(store.soc)} at ${show.voltage(store.rest_V(store.soc))} at rest (${cite(leadAcidRest, locale)}).`,
    store &&
      say`It is stopped at ${show.voltage(store.restFloor_V)} at rest (${show.percent(share.value)} of its label at most, ${cite(share, locale)}; ${cite(restFloor_V, locale)}) or at ${show.voltage(store.loadFloor_V)} at its poles under load (${cite(loadFloor_V, locale)}), whichever comes first.`,
    store &&
      say`Its sag: ${show.resistance(store.resistance_ohm)} (${cite(leadAcidResistance_ohmAh, locale)}; ${cite(outletWiring_ohm, locale)}).`,
  ]
}

function batteryLines(
  { pack }: BatterySource,
  { current_A = 0, store }: Feed,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const { loadFloor_V, restFloor_V, name } = pack.chemistry
  return [
    say`Source current: at most ${show.rate(batterySourceRate_C.value)} × ${show.capacity(pack.capacity_Ah)} = ${show.current(current_A)} (${cite(batterySourceRate_C, locale)}).`,
    store &&
      say`Its floor: ${show.perCell(store.loadFloor_V / pack.series)} a cell under load, ${show.voltage(store.loadFloor_V)} in all, and ${show.perCell(store.restFloor_V / pack.series)} at rest; ${own(name)} must not go below ${show.perCell(loadFloor_V.value)} (${cite(loadFloor_V, locale)}) nor rest below ${show.perCell(restFloor_V.value)} (${cite(restFloor_V, locale)}), and the charger and the club may ask for more.`,
    store && say`Its sag: ${show.resistance(store.resistance_ohm)} in all.`,
  ]
}
