// The correction for a flight controller's count of mAh, from the charges that put them back.

import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { defineCommand, optional, required } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { generalCaution } from '../../src/cautions/cautions.ts'
import {
  chargeGivenBack,
  type MeterCorrection,
  meterCorrection,
} from '../../src/charging/upkeep/flight-meter.ts'
import type { Show } from '../../src/ground/show.ts'
import type { NotedCharge } from '../../src/memory/stores/charge-log.ts'
import { scaleKind } from '../care/scale-kind.ts'
import { figuresIn } from '../shared/figure.ts'
import { cite } from '../shared/working.ts'
import { loggedPack } from './logged-pack.ts'

const fewFlights = 5

export const logMeter = defineCommand({
  name: 'log meter',
  summary: "Corrects a flight controller's count of mAh by what charges put back.",
  options: {
    name: required(packNameKind, {
      description: 'of a saved pack with charges noted with "counted"',
      phrase: text => `flights of ${text}`,
    }),
    scale: optional(scaleKind, {
      description: 'scale factor of the current meter as it is set now',
      phrase: text => `scale factor ${text}`,
    }),
  },
  examples: ['log meter name: wren scale: 400', 'log meter name: wren'],
  answer: async ({ name, scale }, context) => {
    const { charges } = await loggedPack(name, context)
    const flights = charges.flatMap(flightOf).slice(-fewFlights)
    const correction = meterCorrection(flights, scale)
    if (!correction) return noFlight(name)
    return {
      ...corrected(correction, scale, context.show),
      assumed: ['each flight began with a full pack, and the charge filled it again'],
      working: working(flights, correction, scale, context.show),
    }
  },
})

const flightOf = ({ charge_Ah, counted_Ah }: NotedCharge) =>
  counted_Ah === undefined ? [] : [{ counted_Ah, putBack_Ah: charge_Ah }]

function noFlight(name: string): Answer {
  return {
    headline: `No charge of ${name} is noted with what was counted in flight. To note one: log charge name: ${name} put-back: 610mAh counted: 560mAh`,
    cautions: [generalCaution],
  }
}

function corrected(
  { ratio, band, scale }: MeterCorrection,
  before: number | undefined,
  show: Show,
): Pick<Answer, 'headline' | 'figures' | 'cautions'> {
  const off = Math.abs(1 / ratio - 1)
  const reads =
    off < 0.005
      ? 'The meter reads right'
      : `The meter reads ${show.percent(off)} too ${ratio > 1 ? 'low' : 'high'}`
  const advice = scale
    ? `If a larger scale factor makes it read more, set ${factor(scale.raising, show)} in place of ${factor(before ?? 0, show)}; if it makes it read less, set ${factor(scale.lowering, show)}.`
    : `If a larger scale factor makes it read more, multiply the factor by ${show.number(ratio, 3)}; if it makes it read less, divide it by that.`
  const plain = (key: string, label: string, value: number, text: string) =>
    ({ key, label, value, unit: 'count', text }) as const
  return {
    headline: `${reads}. ${advice}`,
    figures: [
      {
        ...plain('ratio', 'put back over counted', ratio, show.number(ratio, 3)),
        ...band,
        text: `${show.number(ratio, 3)} (${show.number(band.low, 3)} to ${show.number(band.high, 3)})`,
      },
      figuresIn(show).percent('reads', 'what it reads of the truth', 1 / ratio),
      ...(scale
        ? [
            plain(
              'scaleRaising',
              'factor, if more of it reads more',
              scale.raising,
              factor(scale.raising, show),
            ),
            plain(
              'scaleLowering',
              'factor, if more of it reads less',
              scale.lowering,
              factor(scale.lowering, show),
            ),
          ]
        : []),
    ],
    cautions: [
      {
        key: 'landByVolts',
        text: 'Land by the volts of the lowest cell as well, never by the count alone: a count that reads low empties the pack below its floor.',
      },
      generalCaution,
    ],
  }
}

function working(
  flights: readonly { counted_Ah: number; putBack_Ah: number }[],
  { ratio }: MeterCorrection,
  scale: number | undefined,
  show: Show,
): string[] {
  const sum = (key: 'counted_Ah' | 'putBack_Ah') =>
    show.capacity(flights.reduce((all, flight) => all + flight[key], 0))
  return [
    `Put back ÷ counted over ${flights.length === 1 ? 'one flight' : `the last ${flights.length} flights`}: ${sum('putBack_Ah')} ÷ ${sum('counted_Ah')} = ${show.number(ratio, 3)}.`,
    ...(scale === undefined
      ? []
      : [
          `Reading in step with the factor: ${factor(scale, show)} × ${show.number(ratio, 3)} = ${factor(scale * ratio, show)}. Reading the other way about: ${factor(scale, show)} ÷ ${show.number(ratio, 3)} = ${factor(scale / ratio, show)}.`,
        ]),
    `Charger and pack are taken at their word: ${cite(chargeGivenBack)}, so the corrected count is a little high, on the safe side.`,
    'First set the offset, so that the meter reads nothing at no current; then correct the factor by several long flights (common practice).',
  ]
}

/** Three digits: more than a current meter is good for. */
const factor = (value: number, show: Show): string => show.number(Number(value.toPrecision(3)), 4)
