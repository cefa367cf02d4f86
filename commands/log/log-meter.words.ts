// What is said of a flight controller's count of mAh.

import type { WordsOf } from '../../src/assistant/command.ts'
import { chargeGivenBack, type FlightCount, type MeterCorrection } from '../../src/charging/upkeep/flight-meter.ts'
import type { Locale } from '../../src/ground/locale.ts'
import type { Text } from '../../src/ground/text.ts'
import { cite } from '../shared/setting.words.ts'
import type { logMeter } from './log-meter.ts'

export const logMeterWords: WordsOf<typeof logMeter> = locale => {
  const { say, own } = locale
  return {
    summary: say`Corrects a flight controller's count of mAh by what charges put back.`,
    takes: {
      name: {
        about: say`of a saved pack with charges noted with "${own('counted')}"`,
        as: text => say`flights of ${text}`,
      },
      scale: { about: say`scale factor of the current meter as it is set now`, as: text => say`scale factor ${text}` },
    },
    answer: ({ correction }, { name, scale }) =>
      correction
        ? [
            readsWords(correction, locale),
            adviceWords(correction, scale, locale),
            say`Land by the volts of the lowest cell as well: a count that reads low empties the pack below its floor.`,
          ]
        : [
            say`No charge of ${own(name)} is noted with what was counted in flight.`,
            say`To note one: ${own(`log charge name: ${name} put-back: 610mAh counted: 560mAh`)}`,
          ],
    figures: {
      ratio: say`put back over counted`,
      reads: say`what it reads of the truth`,
      scaleRaising: say`factor, if more of it reads more`,
      scaleLowering: say`factor, if more of it reads less`,
    },
    working: ({ flights, correction }, { scale }) => (correction ? working(flights, correction, scale, locale) : []),
    assumed: ({ correction }) => [
      correction ? say`each flight began with a full pack, and the charge filled it again` : undefined,
    ],
  }
}

/** So little is within what a charger and a meter can tell. */
const right = 0.005

function readsWords({ ratio }: MeterCorrection, { say, show }: Locale): Text {
  const off = Math.abs(1 / ratio - 1)
  if (off < right) return say`The meter reads right.`
  return ratio > 1
    ? say`The meter reads ${show.percent(off)} too low.`
    : say`The meter reads ${show.percent(off)} too high.`
}

function adviceWords({ ratio, scale }: MeterCorrection, before: number | undefined, locale: Locale): Text {
  const { say, show } = locale
  if (!scale) {
    return say`If a larger scale factor makes it read more, multiply the factor by ${show.number(ratio, 3)}; if it makes it read less, divide it by that.`
  }
  return say`If a larger scale factor makes it read more, set ${factor(scale.raising, locale)} in place of ${factor(before ?? 0, locale)}; if it makes it read less, set ${factor(scale.lowering, locale)}.`
}

function working(
  flights: readonly FlightCount[],
  { ratio }: MeterCorrection,
  scale: number | undefined,
  locale: Locale,
): readonly (Text | undefined)[] {
  const { say, show } = locale
  const sum = (key: keyof FlightCount) => show.capacity(flights.reduce((all, flight) => all + flight[key], 0))
  const over = flights.length === 1 ? say`one flight` : say`the last ${show.number(flights.length, 0)} flights`
  const times = show.number(ratio, 3)
  return [
    say`Put back ÷ counted over ${over}: ${sum('putBack_Ah')} ÷ ${sum('counted_Ah')} = ${times}.`,
    scale === undefined
      ? undefined
      : say`Reading in step with the factor: ${factor(scale, locale)} × ${times} = ${factor(scale * ratio, locale)}. Reading the other way about: ${factor(scale, locale)} ÷ ${times} = ${factor(scale / ratio, locale)}.`,
    say`Charger and pack are taken at their word: ${cite(chargeGivenBack, locale)}, so the corrected count is a little high, on the safe side.`,
    say`First set the offset, so that the meter reads nothing at no current; then correct the factor by several long flights (common practice).`,
  ]
}

/** Three digits: more than a current meter is good for. */
const factor = (value: number, { show }: Locale): Text => show.number(Number(value.toPrecision(3)), 4)
