// A setting and no supply yet: the power it takes, and the smallest supply that carries it.

import type { Context } from '../../src/assistant/context.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { cautionsFor } from '../../src/cautions/cautions.ts'
import { adviseSetting } from '../../src/charging/setting/old-setting.ts'
import { smallestUsbSupply, soldPowers_W } from '../../src/charging/sources/supply.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { pdOffers } from '../../src/charging/things/usb-pd.ts'
import { chargerKind, packKind, sourceKind } from '../../src/language/kinds/values.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { refusedAnswer } from '../shared/refused.ts'
import { cite, settingWorking } from '../shared/working.ts'

interface Wanted {
  readonly pack: Pack
  readonly charger?: Charger
  readonly current?: number
}

/** Bench and wall supplies come at these volts (common practice). */
const usualVoltages_V = [12, 15, 19, 24]
/** A supply that runs at its limit has no room for the dip of a lead or a warm day. */
const headroom = 1.2

export function neededAnswer({ pack, charger, current }: Wanted, { house, show }: Context): Answer {
  const setting = adviseSetting({ pack, charger, limits: house })
  if ('refusal' in setting) return refusedAnswer(setting, { pack }, show)
  const [limit] = setting.limits
  const asked_A = current ?? setting.current_A
  const tooMuch = asked_A > limit.value_A * (1 + 1e-9)
  const current_A = tooMuch ? setting.current_A : asked_A
  const input_W = (setting.cutoffPack_V * current_A) / setting.efficiency
  const usb = smallestUsbSupply(input_W, charger)
  const { minInput_V = 0, maxInput_V = Number.POSITIVE_INFINITY } = charger ?? {}
  const benches = usualVoltages_V.filter(volts => volts >= minInput_V && volts <= maxInput_V)
  const upTo_A = (volts: number) => Math.ceil(((input_W * headroom) / volts) * 10 - 1e-6) / 10
  const bench = benches.map(volts => `${show.voltage(volts)} ${show.current(upTo_A(volts))}`).join(' or ')
  const figure = figuresIn(show)
  const usbName =
    usb && sourceKind.write({ kind: 'supply', offers: pdOffers(usb.supply_W), usbPd_W: usb.supply_W })
  return {
    verdict: tooMuch ? 'do not charge' : setting.verdict,
    headline: [
      tooMuch
        ? `Do not charge this pack at ${show.current(asked_A)}: its limit is ${show.current(limit.value_A)}. At ${show.current(current_A)} it takes`
        : `${show.current(current_A)} into ${packKind.write(pack)} takes`,
      `${show.power(Math.ceil(input_W))} from the supply.`,
      usb
        ? `The smallest USB supply that carries it is ${usbName} (${show.voltage(usb.offer.voltage_V)}, ${show.current(usb.offer.current_A)}).`
        : 'No USB supply carries it for this charger.',
      bench ? `A bench or wall supply: ${bench}.` : '',
    ]
      .filter(Boolean)
      .join(' '),
    figures: [
      figure.current('setCurrent', 'charge current', current_A),
      figure.voltage('cutoffPack', 'cutoff of the pack', setting.cutoffPack_V),
      figure.power('inputPower', 'input power at most', input_W),
      ...(usb ? [figure.power('usbSupply', 'smallest USB supply', usb.supply_W)] : []),
      ...benches.map(volts =>
        figure.current(`supplyCurrent${volts}V`, `supply of ${volts} V`, upTo_A(volts)),
      ),
    ],
    working: [
      ...settingWorking(setting, pack, show),
      `Input: ${show.current(current_A)} × ${show.voltage(setting.cutoffPack_V)} ÷ ${show.number(setting.efficiency, 2)} = ${show.power(input_W)}.`,
      `USB: the first of the classes sold (${cite(soldPowers_W)}) with an offer inside the charger's input that gives this (USB Power Delivery Specification R3.x, power rules).`,
      'Bench and wall supplies: a fifth more than this (common practice), so that they do not run at their limit.',
    ],
    cautions: cautionsFor({
      pack,
      current_A,
      highest_A: limit.value_A,
      ...(usb && {
        source: { kind: 'supply' as const, offers: [usb.offer], usbPd_W: usb.supply_W },
        input_A: input_W / usb.offer.voltage_V,
      }),
    }),
    followUps: usbName
      ? [
          followUp(`On ${usbName}`, 'current', {
            pack: packKind.write(pack),
            ...(charger && { charger: chargerKind.write(charger) }),
            source: usbName,
          }),
        ]
      : [],
  }
}
