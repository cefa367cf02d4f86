// The smallest supply that carries a setting, or chargers flat out, in words.

import type { Permit } from '../../src/charging/situation/permit.ts'
import type { Chargers } from '../../src/charging/sources/load.ts'
import {
  type Carried,
  type Needed,
  type Supplies,
  soldPowers_W,
  type UsbChoice,
} from '../../src/charging/sources/supply.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { chargerEfficiency, efficiencyOf, plugShare } from '../../src/charging/things/practice.ts'
import { pdOffers } from '../../src/charging/things/usb-pd.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'
import { packKind, sourceKind } from '../../src/language/kinds/values.ts'
import { type CellType, writeCellType } from '../../src/language/things/cell-type.ts'
import { cite, settingWorking } from '../shared/setting.words.ts'

interface Permitted {
  readonly permit: Permit
}

/** What of the question shapes the words. */
interface AskedOf {
  readonly pack?: Pack | undefined
  readonly chemistry?: CellType | undefined
  readonly load: Chargers
  readonly voltage?: number | undefined
  /** Of a lead of one's own. */
  readonly gauge?: number | undefined
}

export const usbNamed = ({ supply_W }: UsbChoice): string =>
  sourceKind.write({ kind: 'supply', offers: pdOffers(supply_W), usbPd_W: supply_W })

export function neededWords(
  { current_A, heldBy, setting, ...supplies }: Needed,
  { pack, chemistry, ...asked }: AskedOf,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const what = own(pack ? packKind.write(pack) : chemistry ? writeCellType(chemistry) : '')
  const { count, charger } = asked.load
  const [given_W, most_W] = [current_A * setting.cutoffPack_V, charger?.power_W]
  const each = count === 1 ? say`` : say` on ${show.number(count, 0)} chargers`
  return [
    most_W === undefined
      ? undefined
      : heldBy
        ? say`No: the charger gives at most ${show.current(current_A)} here.`
        : say`Yes: ${show.power(given_W)} of the charger's ${show.power(most_W)}.`,
    say`${show.current(current_A)} into ${what}${each} ends at ${show.power(given_W * count)}; for that the supply gives ${show.power(Math.ceil(supplies.input_W))}.`,
    heldBy && say`That is all that ${limitHolders(locale)[heldBy.kind]}.`,
    ...suppliesWords(supplies, asked, locale),
  ]
}

/** What chargers take at the watts on their labels, and what carries that. */
export function flatOutWords(
  { carried, generator_W, ...supplies }: Supplies & { readonly carried?: Carried | undefined; generator_W?: number },
  asked: AskedOf,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const { charger, count, isAlike } = asked.load
  if (generator_W !== undefined)
    return [
      say`Take a generator, an inverter or an outlet of ${show.power(Math.ceil(generator_W))} or more for ${show.power(Math.ceil(supplies.input_W))} at its plug: ${cite(plugShare, locale)}.`,
    ]
  const [out, into] = [show.power(charger?.power_W ?? 0), show.power(Math.ceil(supplies.input_W))]
  return [
    carried?.current_A === undefined
      ? undefined
      : say`Into ${own(`${carried.series}S`)} the charger gives up to ${show.current(carried.current_A)}, at ${show.voltage(carried.cutoffPack_V)}. Set no more than the pack takes: 1C, its Ah as amps, where its label names no charge rate.`,
    charger === undefined
      ? undefined
      : !isAlike
        ? say`Flat out the ${show.number(count, 0)} chargers take ${into} together from their supply.`
        : count === 1
          ? say`Flat out, with ${out} into the pack, the charger takes ${into} from its supply.`
          : say`Flat out, with ${out} each into the packs, ${show.number(count, 0)} chargers take ${into} from their supply.`,
    ...suppliesWords(supplies, asked, locale),
  ]
}

function suppliesWords(
  { usb, benches }: Supplies,
  { load: { count }, voltage, gauge }: AskedOf,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  if (gauge !== undefined && !usb && benches.length === 0)
    return [say`That lead does not carry it: take a thicker or a shorter one, or less current.`]
  if (voltage !== undefined) {
    const [bench] = benches
    if (!bench) return [say`No supply of ${show.voltage(voltage)} feeds a charger.`]
    return [
      say`At ${show.voltage(voltage)} that is ${show.current(bench.drawn_A)}: take a supply of ${show.current(bench.current_A)} or more, so that it does not run at its limit.`,
    ]
  }
  return [
    usb
      ? say`Smallest USB supply: ${own(usbNamed(usb))} (${show.voltage(usb.offer.voltage_V)}, ${show.current(usb.offer.current_A)}).`
      : count === 1
        ? say`No USB supply carries it for this charger.`
        : undefined,
    benchWords(benches, usb !== undefined, locale),
  ]
}

function benchWords(benches: Needed['benches'], isOther: boolean, { say, show }: Locale): Text | undefined {
  if (benches.length === 0) return undefined
  const list = benches.map(bench => joined([show.voltage(bench.voltage_V), show.current(bench.current_A)]))
  return isOther
    ? say`Or a bench or wall supply: ${joined(list, ', ')}.`
    : say`Take a bench or wall supply: ${joined(list, ', ')}.`
}

export function neededWorking(
  result: (Needed & Permitted) | (Supplies & { readonly setting: undefined }),
  { load: { charger, count, isAlike, flatOut_W }, voltage }: AskedOf,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  const efficiency = show.number(efficiencyOf(charger), 2)
  const times = count === 1 || !isAlike ? say`` : say` × ${show.number(count, 0)}`
  return [
    ...(result.setting
      ? [
          ...settingWorking(result.setting, result.permit.situation.pack, locale),
          say`Input: ${show.current(result.current_A)} × ${show.voltage(result.setting.cutoffPack_V)} ÷ ${efficiency}${times} = ${show.power(result.input_W)}.`,
        ]
      : charger === undefined
        ? []
        : [
            say`Input: ${show.power(isAlike ? (charger.power_W ?? 0) : (flatOut_W ?? 0) * efficiencyOf(charger))} ÷ ${efficiency}${times} = ${show.power(result.input_W)} (${cite(chargerEfficiency, locale)}).`,
          ]),
    voltage === undefined && count === 1
      ? say`USB: the first of the classes sold (${cite(soldPowers_W, locale)}) with an offer inside the charger's input that gives this (USB Power Delivery Specification R3.x, power rules).`
      : undefined,
    say`Bench and wall supplies: a fifth more than this (common practice), so that they do not run at their limit.`,
  ]
}
