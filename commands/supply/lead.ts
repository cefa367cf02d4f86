// What a lead of a gauge and length takes from the volts, or the thinnest gauge that a load may have.

import { defineCommand, type Inputs, optional, required } from '../../src/assistant/old-command.ts'
import type { Answer } from '../../src/assistant/reply.ts'
import { leadCautions } from '../../src/cautions/leads.ts'
import { type Lead, type LeadLoad, leadOf, thinnestLead } from '../../src/charging/sources/lead.ts'
import { mostRise_K } from '../../src/charging/things/wire.ts'
import { Problem } from '../../src/ground/problem.ts'
import type { Show } from '../../src/ground/show.ts'
import {
  currentKind,
  gaugeKind,
  lengthKind,
  temperatureKind,
  voltageKind,
} from '../../src/language/kinds/values.ts'
import { followUp, written } from '../shared/follow-up.ts'
import { type DropLimit, dropKind } from './drop-kind.ts'
import { gaugeName, leadFigures, leadWorking } from './lead-words.ts'

const options = {
  gauge: optional(gaugeKind, {
    description: 'of the wire; the thinnest that will do when not said',
    phrase: text => text,
  }),
  length: required(lengthKind, {
    description: 'of the lead from end to end',
    phrase: text => `${text} long`,
  }),
  current: required(currentKind, { description: 'that flows through it', phrase: text => `at ${text}` }),
  voltage: optional(voltageKind, { description: 'that is fed in', phrase: text => `fed with ${text}` }),
  drop: optional(dropKind, {
    description: 'the most it may drop, in volts or percent',
    phrase: text => `dropping ${text} at most`,
  }),
  temperature: optional(temperatureKind, {
    description: 'of the air about it; 20 °C when not said',
    phrase: text => `in air at ${text}`,
  }),
}

/** Where a gauge is wanted and no limit is named. */
const usualShare = 0.03
const usual_V = 12
const usualAir_C = 20

export const lead = defineCommand({
  name: 'lead',
  summary: 'What a lead drops and how warm it grows, or the thinnest wire that will do.',
  options,
  examples: [
    'lead gauge: AWG 16 length: 1m current: 10A voltage: 12V',
    'lead length: 2m current: 8A voltage: 12V drop: 3%',
    'lead gauge: AWG 24 length: 30cm current: 10A',
  ],
  plainWords: [
    'what wire',
    'awg for',
    'what awg',
    'which awg',
    'which wire',
    'wire gauge',
    'what gauge',
    'which gauge',
    'voltage drop',
    'how thick',
  ],
  meantBy: [['gauge'], ['gauge', 'current', 'length'], ['length', 'current']],
  answer: (inputs, { show }) => {
    const { gauge, length, current, temperature = usualAir_C } = inputs
    const load: LeadLoad = { length_m: length, current_A: current, air_C: temperature }
    const assumed = inputs.temperature === undefined ? [`the air is at ${show.temperature(usualAir_C)}`] : []
    return gauge === undefined
      ? chosen(inputs, load, assumed, show)
      : judged(gauge, inputs, load, assumed, show)
  },
})

type LeadInputs = Inputs<typeof options>

/** The drop that is allowed, in V; undefined where the question sets no limit. Throws a Problem for a share of nothing. */
function limitOf(limit: DropLimit | undefined, voltage_V: number | undefined): number | undefined {
  if (limit === undefined || limit.kind === 'volts') return limit?.drop_V
  if (voltage_V !== undefined) return limit.share * voltage_V
  throw new Problem({
    what: 'A drop in percent needs the voltage that is fed in.',
    expected: 'voltage: what the lead is fed with, or the drop in volts',
    example: 'lead length: 2m current: 8A voltage: 12V drop: 3%',
  })
}

function judged(gauge: number, inputs: LeadInputs, load: LeadLoad, assumed: string[], show: Show): Answer {
  const { voltage, drop } = inputs
  const most_V = limitOf(drop, voltage)
  const found = leadOf(gauge, load)
  const tooWarm = found.rise_K > mostRise_K.value
  const tooMuch = most_V !== undefined && found.warmDrop_V > most_V
  const better = tooWarm || tooMuch ? thinnestLead(load, most_V) : undefined
  const instead =
    better === undefined
      ? 'No single wire to AWG 0 will do: shorten the lead.'
      : `Use ${gaugeName(better)} or thicker.`
  const headline = tooWarm
    ? `Do not run ${show.current(load.current_A)} through ${gaugeName(gauge)}: ${warmth(found, show)} ${instead}`
    : tooMuch
      ? `${gaugeName(gauge)} is too thin here: it drops ${show.voltage(found.warmDrop_V)}, more than ${show.voltage(most_V)}. ${instead}`
      : `${gaugeName(gauge)} drops ${show.voltage(found.warmDrop_V)} and ${warmth(found, show)}${arrives(found, voltage, show)}`
  return {
    headline,
    figures: leadFigures(gauge, load, found, voltage, show),
    working: leadWorking(gauge, load, found, show),
    cautions: leadCautions,
    followUps: [
      ...(better === undefined
        ? []
        : [
            followUp(`With ${gaugeName(better)}`, 'lead', {
              ...written(options, inputs),
              gauge: gaugeName(better),
            }),
          ]),
    ],
    assumed,
  }
}

function chosen(inputs: LeadInputs, load: LeadLoad, assumed: string[], show: Show): Answer {
  const { drop } = inputs
  const isAssumed = drop === undefined && inputs.voltage === undefined
  const voltage = isAssumed ? usual_V : inputs.voltage
  const limit = drop ?? { kind: 'share', share: usualShare }
  const most_V = limitOf(limit, voltage)
  const said = drop
    ? assumed
    : [
        ...assumed,
        ...(isAssumed ? [`it is fed with ${show.voltage(usual_V)}`] : []),
        `it may drop ${show.percent(usualShare)} of the voltage (common practice for low-voltage leads)`,
      ]
  const gauge = thinnestLead(load, most_V)
  if (gauge === undefined) {
    return {
      headline: `No single wire to AWG 0 keeps within ${show.voltage(most_V ?? 0)} at ${show.current(load.current_A)} over this length: shorten the lead, or feed in a higher voltage.`,
      cautions: leadCautions,
      assumed: said,
    }
  }
  const found = leadOf(gauge, load)
  return {
    headline: `Use ${gaugeName(gauge)} or thicker: it drops ${show.voltage(found.warmDrop_V)} and ${warmth(found, show)}${arrives(found, voltage, show)}`,
    figures: leadFigures(gauge, load, found, voltage, show),
    working: [
      ...leadWorking(gauge, load, found, show),
      `The limit is ${show.voltage(most_V ?? 0)}; the next thinner wire passes it or grows warmer than allowed.`,
    ],
    cautions: leadCautions,
    followUps: [
      followUp('Twice as long', 'lead', {
        ...written(options, inputs),
        length: lengthKind.write(load.length_m * 2),
      }),
    ],
    assumed: said,
  }
}

function warmth({ rise_K }: Lead, show: Show): string {
  if (rise_K > 200) return 'it would overheat.'
  const degrees = show.temperature(Math.ceil(rise_K))
  return rise_K > mostRise_K.value
    ? `it would grow about ${degrees} warmer than the air.`
    : `grows about ${degrees} warmer than the air.`
}

const arrives = ({ warmDrop_V }: Lead, voltage_V: number | undefined, show: Show): string =>
  voltage_V === undefined
    ? ''
    : ` Of ${show.voltage(voltage_V)} the charger sees ${show.voltage(Math.max(0, voltage_V - warmDrop_V))}.`
