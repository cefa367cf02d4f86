// What is said of a lead, and what could be asked next.

import type { WordsOf } from '../../src/assistant/command.ts'
import { type LeadLoad, usualAir_C } from '../../src/charging/leads/lead.ts'
import { type PlugName, plugs_A } from '../../src/charging/leads/plug.ts'
import {
  airCooling,
  copperCoefficient_perK,
  copperResistivity_ohmm,
  insulation_mm,
  mostRise_K,
  wireArea_mm2,
  wireDiameter_mm,
  wireResistance_ohm,
} from '../../src/charging/leads/wire.ts'
import { chargerEfficiency } from '../../src/charging/things/practice.ts'
import type { Locale } from '../../src/ground/locale.ts'
import { joined, type Text } from '../../src/ground/text.ts'
import { gaugeKind, lengthKind } from '../../src/language/kinds/values.ts'
import { asksAgain } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import { type LeadFound, lead, usual_V, usualLength_m, usualShare, type Wire } from './lead.ts'

export const leadWords: WordsOf<typeof lead> = locale => {
  const { say, show, own } = locale
  const named = (gauge: number) => own(gaugeKind.write(gauge))
  return {
    summary: say`What a lead drops and how warm it grows, or the thinnest wire that will do.`,
    asks: [own('which wire for 10A over 1m at 12V'), own('is AWG 14 enough for 20A over 2m')],
    takes: {
      gauge: { about: say`of the wire; the thinnest that will do when not said`, as: text => text },
      length: { about: say`of the lead from end to end`, as: text => say`${text} long` },
      current: {
        about: say`the current that flows through the lead, or the watts of its charger`,
        as: text => say`at ${text}`,
      },
      power: { about: say`of the charger that it feeds, where no current is said`, as: text => say`for ${text}` },
      voltage: { about: say`that is fed in`, as: text => say`fed with ${text}` },
      drop: { about: say`the most it may drop, in volts or percent`, as: text => say`dropping ${text} at most` },
      temperature: { about: say`of the air about it; 20 °C when not said`, as: text => say`in air at ${text}` },
      plug: { about: say`that the current goes through`, as: text => say`through ${text}` },
    },
    answer: (found, { plug }) => [
      plug && plugWords(plug, found.load.current_A, locale),
      found.isMost && found.wire ? mostWords(found.wire, found.load, locale) : undefined,
      found.isMost ? undefined : found.told ? toldWords(found, locale) : chosenWords(found, locale),
      found.fuse_A === undefined
        ? say`Fuse it near the battery, and feel it after some minutes: one too warm to hold is too thin or badly joined.`
        : say`Fuse it near the battery with ${show.current(found.fuse_A)}, and feel it after some minutes: one too warm to hold is too thin or badly joined.`,
    ],
    figures: {
      fuse: say`fuse`,
      gauge: say`wire, AWG`,
      area: say`cross-section`,
      resistance: say`resistance, out and back`,
      drop: say`drop, cold and warm`,
      heat: say`heat`,
      rise: say`warmer than the air by`,
      chargerSees: say`the charger sees`,
    },
    working: found => leadWorking(found, locale),
    assumed: (_, { gauge, length, current, power, voltage, drop, temperature }) => [
      temperature === undefined ? say`the air is at ${show.temperature(usualAir_C)}` : undefined,
      length === undefined
        ? say`the lead is ${own(lengthKind.write(usualLength_m))} long: each metre drops as much`
        : undefined,
      voltage === undefined &&
      ((gauge === undefined && drop === undefined) || (current === undefined && power !== undefined))
        ? say`it is fed with ${show.voltage(usual_V)}`
        : undefined,
      current === undefined && power !== undefined
        ? {
            text: say`the charger is taken to pass on ${show.percent(chargerEfficiency.value)} of its input`,
            from: cite(chargerEfficiency, locale),
          }
        : undefined,
      gauge === undefined && drop === undefined
        ? {
            text: say`it may drop ${show.percent(usualShare)} of the voltage`,
            from: say`common practice for low-voltage leads`,
          }
        : undefined,
    ],
    next: ({ told, wire, better, load }, asked) => {
      const again = asksAgain(lead.takes, asked)
      return [
        better === undefined
          ? undefined
          : again(say`With ${named(better)}`, 'lead', { gauge: gaugeKind.write(better) }),
        told || !wire ? undefined : again(say`Twice as long`, 'lead', { length: lengthKind.write(load.length_m * 2) }),
      ]
    },
  }
}

function plugWords(plug: PlugName, current_A: number, { say, show, own }: Locale): Text {
  const { low, high } = plugs_A.value[plug]
  const [amps, most] = [show.current(current_A), show.current(high)]
  if (current_A <= low) return say`${own(plug)} bears ${amps} for as long as you like: ${show.current(low)} at most.`
  return current_A <= high
    ? say`${own(plug)} bears ${amps} for some minutes, as in a flight; for longer ${show.current(low)} are its most.`
    : say`${amps} are too much for ${own(plug)}: it bears ${most} for minutes. Take a larger plug.`
}

function toldWords(
  { wire, load, voltage_V, most_V = 0, tooWarm, tooMuch, better }: LeadFound,
  locale: Locale,
): Text | undefined {
  if (!wire) return undefined
  const { say, show, own } = locale
  const name = own(gaugeKind.write(wire.gauge))
  const drops = show.voltage(wire.warmDrop_V)
  const instead =
    better === undefined
      ? say`No single wire to AWG 0 will do: shorten the lead.`
      : say`Use ${own(gaugeKind.write(better))} or thicker.`
  if (tooWarm) {
    const warm =
      wire.rise_K > 200
        ? say`it would overheat.`
        : say`it would grow about ${degrees(wire, locale)} warmer than the air.`
    return say`Do not run ${show.current(load.current_A)} through ${name}: ${warm} ${instead}`
  }
  return tooMuch
    ? say`${name} is too thin here: it drops ${drops}, more than ${show.voltage(most_V)}. ${instead}`
    : joined([
        say`${name} will do: it drops ${drops} and grows about ${degrees(wire, locale)} warmer than the air.`,
        arrives(wire, voltage_V, locale),
      ])
}

function mostWords(wire: Wire, { current_A }: LeadLoad, locale: Locale): Text {
  const { say, show, own } = locale
  return say`${own(gaugeKind.write(wire.gauge))} has ${show.number(wireArea_mm2(wire.gauge), 2)} mm² of copper and bears about ${show.current(current_A)} for long, ${degrees(wire, locale)} warmer than the air. At that it drops ${show.voltage(wire.warmDrop_V)} over this length, out and back.`
}

function chosenWords({ wire, load, voltage_V, most_V = 0 }: LeadFound, locale: Locale): Text {
  const { say, show, own } = locale
  if (!wire)
    return say`No single wire to AWG 0 keeps within ${show.voltage(most_V)} at ${show.current(load.current_A)} over this length: shorten the lead, or feed in a higher voltage.`
  return joined([
    say`Use ${own(gaugeKind.write(wire.gauge))} or thicker: it drops ${show.voltage(wire.warmDrop_V)} and grows about ${degrees(wire, locale)} warmer than the air.`,
    arrives(wire, voltage_V, locale),
  ])
}

const degrees = ({ rise_K }: Wire, { show }: Locale): Text => show.temperature(Math.ceil(rise_K))

const arrives = ({ warmDrop_V }: Wire, voltage_V: number | undefined, { say, show }: Locale) =>
  voltage_V === undefined
    ? undefined
    : say`Of ${show.voltage(voltage_V)} the charger sees ${show.voltage(Math.max(0, voltage_V - warmDrop_V))}.`

function leadWorking({ wire, load, told, most_V = 0 }: LeadFound, locale: Locale): readonly (Text | undefined)[] {
  const { say, show, own } = locale
  const copper = say`This is for copper: copper-clad aluminium of the same gauge resists about 60 % more, and each plug or joint adds to it.`
  const place = say`This is for charge leads; fixed wiring of a building or a vehicle is for the local code and a licensed hand.`
  if (!wire) return [copper, place]
  const { gauge, resistance_ohm, drop_V } = wire
  const { length_m, current_A, air_C } = load
  const meter_mohm = wireResistance_ohm(gauge, 1, 20) * 1000
  const number = show.number
  return [
    say`${own(gaugeKind.write(gauge))}: diameter 0.127 mm × 92^((36 − ${number(gauge, 0)}) ÷ 39) = ${number(wireDiameter_mm(gauge), 3)} mm (ASTM B258), ${number(wireArea_mm2(gauge), 2)} mm².`,
    say`Resistance: ${number(meter_mohm, 2)} mΩ a metre at 20 °C (${cite(copperResistivity_ohmm, locale)}), × (1 + ${number(copperCoefficient_perK.value, 5)} × (${number(air_C, 0)} − 20)) × 2 × ${number(length_m, 2)} m = ${show.resistance(resistance_ohm)}.`,
    say`Drop: ${show.current(current_A)} × ${show.resistance(resistance_ohm)} = ${number(drop_V, 3)} V while the wire is cold. Flexible wire of the same gauge may have 5 % more (common practice).`,
    say`Warming: the heat of each metre leaves through its surface (${cite(airCooling, locale)}; ${cite(insulation_mm, locale)}). Limit ${show.temperature(mostRise_K.value)} above the air (${cite(mostRise_K, locale)}); an estimate for a straight lead in still air: a coiled or covered one grows warmer.`,
    told
      ? undefined
      : say`The limit is ${show.voltage(most_V)}; the next thinner wire passes it or grows warmer than allowed.`,
    say`Plugs: ${cite(plugs_A, locale)}.`,
    say`Fuse: the next size of which the current is four fifths at most (common practice), and no more than the wire bears.`,
    copper,
    place,
  ]
}
