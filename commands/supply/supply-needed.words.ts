// The smallest supply that carries a setting, in words.

import type { Permit } from '../../src/charging/situation/permit.ts'
import { type Needed, soldPowers_W, type UsbChoice } from '../../src/charging/sources/supply.ts'
import { pdOffers } from '../../src/charging/things/usb-pd.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { limitHolders } from '../../src/handbook/rules/holders.words.ts'
import { packKind, sourceKind } from '../../src/language/kinds/values.ts'
import { cite, settingWorking } from '../shared/setting.words.ts'

interface Wanted extends Needed {
  readonly permit: Permit
}

export const usbNamed = ({ supply_W }: UsbChoice): string =>
  sourceKind.write({ kind: 'supply', offers: pdOffers(supply_W), usbPd_W: supply_W })

export function neededWords(
  { current_A, input_W, usb, benches, heldBy, permit }: Wanted,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const pack = own(packKind.write(permit.situation.pack))
  return [
    say`${show.current(current_A)} into ${pack} takes ${show.power(Math.ceil(input_W))} from the supply.`,
    heldBy && say`All that ${limitHolders(locale)[heldBy.kind]}.`,
    usb
      ? say`The smallest USB supply that carries it is ${own(usbNamed(usb))} (${show.voltage(usb.offer.voltage_V)}, ${show.current(usb.offer.current_A)}).`
      : say`No USB supply carries it for this charger.`,
    benchWords(benches, locale),
  ]
}

function benchWords(benches: Needed['benches'], { say, show }: Locale): Text | undefined {
  if (benches.length === 0) return undefined
  const list = benches.map(bench => joined([show.voltage(bench.voltage_V), show.current(bench.current_A)]))
  return say`Or a bench or wall supply, one of these: ${joined(list, ', ')}.`
}

export function neededWorking(
  { setting, current_A, input_W, permit }: Wanted,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  return [
    ...settingWorking(setting, permit.situation.pack, locale),
    say`Input: ${show.current(current_A)} × ${show.voltage(setting.cutoffPack_V)} ÷ ${show.number(setting.efficiency, 2)} = ${show.power(input_W)}.`,
    say`USB: the first of the classes sold (${cite(soldPowers_W, locale)}) with an offer inside the charger's input that gives this (USB Power Delivery Specification R3.x, power rules).`,
    say`Bench and wall supplies: a fifth more than this (common practice), so that they do not run at their limit.`,
  ]
}
