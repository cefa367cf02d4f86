// What is said of a pack that lends, and what could be asked next.

import type { Asked, WordsOf } from '../../src/assistant/command.ts'
import { converterEfficiency, deviceEfficiency } from '../../src/charging/sources/lend.ts'
import { batterySourceRate_C } from '../../src/charging/things/practice.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { packKind, percentKind } from '../../src/language/kinds/values.ts'
import { followUp } from '../shared/next.ts'
import { cite } from '../shared/setting.words.ts'
import type { lend } from './lend.ts'

export const lendWords: WordsOf<typeof lend> = locale => {
  const { say, show, own } = locale
  return {
    summary: say`A flight pack as supply for a phone or other device: energy, time, where to stop.`,
    asks: [own('can a 4S 1500 LiPo run a 10W phone charger'), own('can a 3S 2200 LiPo run a 5W camera')],
    takes: {
      pack: { about: say`the pack that lends`, as: text => text },
      power: { about: say`what the device takes`, as: text => say`lent at ${text}` },
      from: { about: say`where the pack stands now; full when not said`, as: text => say`from ${text}` },
      device: { about: say`what the device's battery holds`, as: text => say`to a battery of ${text}` },
      efficiency: { about: say`of the converter`, as: text => say`through a converter of ${text}` },
      temperature: { about: say`of the cells; a room when not said`, as: text => say`cells at ${text}` },
    },
    answer: (lent, { power }) => [
      say`It lends about ${show.energy(lent.given_Wh)}, ${lasting(lent.duration_s, locale)} at ${show.power(power)}${fillsWords(lent, locale)}.`,
      say`Stop at ${show.perCell(lent.stopPerCell_V)} in the lowest cell under load (${show.voltage(lent.stop_V)} in all), or where it rests at ${show.perCell(lent.restStopPerCell_V)}, and unplug the converter: left plugged in it drains the pack to ruin.`,
    ],
    figures: {
      energyGiven: say`into the device`,
      lendTime: say`time`,
      stopVoltage: say`stop at, under load`,
      stopPerCell: say`per cell`,
      stopAtRest: say`or where a cell rests at`,
      current: say`out of the pack at most`,
      chargeLeft: say`charge left in the pack`,
      mostPower: say`most power to lend`,
      deviceCharge: say`of the device's battery`,
    },
    working: (lent, asked) => lendWorking(lent, asked, locale),
    assumed: (_, { from, efficiency }) => [
      from === undefined ? say`the pack is taken to be full` : undefined,
      efficiency === undefined
        ? {
            text: say`the converter is taken to pass on ${show.percent(converterEfficiency.value)}`,
            from: cite(converterEfficiency, locale),
          }
        : undefined,
    ],
    next: ({ leftSoc }, { pack }) => [
      followUp(say`How long to charge it again?`, 'time', {
        pack: packKind.write(pack),
        from: percentKind.write(Math.round(leftSoc * 100) / 100),
      }),
    ],
  }
}

type Lent = Parameters<ReturnType<typeof lendWords>['answer']>[0]

/** Rounded down: it must not promise more than it holds. */
const lasting = (duration_s: number, { show }: Locale): Text => show.roughly(Math.max(60, duration_s), Math.floor)

function fillsWords({ fills }: Lent, { say, show }: Locale): Text {
  if (fills === undefined) return say``
  return fills >= 1
    ? say`, which fills the device ${show.number(Math.floor(fills * 10) / 10, 1)} times`
    : say`, which is ${show.percent(Math.floor(fills * 100) / 100)} of the device's battery`
}

function lendWorking(
  lent: Lent,
  { power, device, efficiency }: Asked<typeof lend.takes>,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  const { pack, house } = lent.permit.situation
  const { loadFloor_V, restFloor_V, name } = pack.chemistry
  const byClub = (house.sourceFloorPerCell_V?.[name] ?? 0) > loadFloor_V.value
  const drawn = show.power(power / lent.efficiency)
  const passed = show.number(lent.efficiency, 2)
  return [
    say`Floor: ${show.perCell(lent.stopPerCell_V)} a cell under load (${byClub ? say`the rules of this club` : cite(loadFloor_V, locale)}), ${show.perCell(lent.restStopPerCell_V)} at rest (${cite(restFloor_V, locale)}), whichever comes first.`,
    say`Out of the pack: ${show.power(power)} ÷ ${passed} = ${drawn} (${efficiency === undefined ? cite(converterEfficiency, locale) : say`efficiency as given`}), down to the floor with the sag of its own resistance: ${show.energy(lent.given_Wh / lent.efficiency)}.`,
    say`Into the device: × ${passed} = ${show.energy(lent.given_Wh)}; ÷ ${show.power(power)} = ${show.duration(lent.duration_s)}.`,
    device === undefined || lent.fills === undefined
      ? undefined
      : say`Of its battery: ${show.energy(lent.given_Wh)} × ${show.number(deviceEfficiency.value, 2)} ÷ ${show.energy(device)} = ${show.percent(lent.fills)} (${cite(deviceEfficiency, locale)}).`,
    say`Current: ${drawn} ÷ ${show.voltage(lent.stop_V)} = ${show.current(lent.current_A)} at most; ${cite(batterySourceRate_C, locale)}.`,
  ]
}
