// What the charges noted of a saved pack say: capacity and resistance over time, and a plain verdict.

import { packNameKind } from '../../src/assistant/kit/kit-name.ts'
import { defineCommand, required } from '../../src/assistant/old-command.ts'
import type { Answer, Figure } from '../../src/assistant/reply.ts'
import { careCautions } from '../../src/cautions/pack-care.ts'
import type { Pack } from '../../src/charging/things/pack.ts'
import { capacityLeft } from '../../src/charging/upkeep/age-signs.ts'
import { judgeLog, type PackLog } from '../../src/charging/upkeep/pack-log.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { logChart } from '../../src/charts/log-chart.ts'
import { english } from '../../src/ground/locale.ts'
import type { Show } from '../../src/ground/show.ts'
import type { NotedCharge } from '../../src/memory/stores/charge-log.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp } from '../shared/follow-up.ts'
import { conditionVerdicts, signWords, thresholdWords } from './log-words.ts'
import { type LoggedPack, loggedPack } from './logged-pack.ts'

const mostLines = 8

export const logShow = defineCommand({
  name: 'log show',
  summary: 'Capacity and resistance of a saved pack over time: healthy, ageing or to retire.',
  options: {
    name: required(packNameKind, { description: 'of the saved pack', phrase: text => `the log of ${text}` }),
  },
  examples: ['log show name: wren'],
  answer: async ({ name }, context) => {
    const logged = await loggedPack(name, context)
    return logged.charges.length === 0 ? nothingNoted(name) : shown(logged, context.show)
  },
})

function nothingNoted(name: string): Answer {
  return {
    headline: `No charge of ${name} is noted yet. To note one: log charge name: ${name} put-back: 640mAh from: 3.6V`,
    cautions: careCautions('health', {}),
  }
}

function shown({ entry: { name }, pack, charges }: LoggedPack, show: Show): Answer {
  const log = judgeLog(pack, charges)
  const { condition } = log
  return {
    ...(condition && { verdict: conditionVerdicts[condition] }),
    headline: headline(name, log, show),
    figures: figures(log, pack, charges, show),
    working: [
      ...thresholdWords(show),
      ...charges.slice(-mostLines).map((charge, index) => line(charge, index, log, charges.length, show)),
      ...(charges.length > mostLines ? [`Before these: ${charges.length - mostLines} more.`] : []),
    ],
    cautions: careCautions('health', { pack }),
    followUps: [
      followUp('How long to charge it?', 'time', { pack: name }),
      ...(charges.some(({ counted_Ah }) => counted_Ah !== undefined)
        ? [followUp('Correct the current meter', 'log meter', { name })]
        : []),
    ],
    charts: pictures(name, pack, charges, log, show),
  }
}

function headline(name: string, { condition, signs }: PackLog, show: Show): string {
  if (!condition) {
    return `The charges noted of ${name} do not tell its age yet: note one with "from", the volts per cell at rest before it, or the resistance of its cells.`
  }
  const why = signs.map(sign => signWords(sign, show)).join('; ')
  switch (condition) {
    case 'healthy':
      return `${name} is healthy by what was noted.`
    case 'ageing':
      return `${name} is ageing: ${why}. Keep it for gentle use, and charge it at no more than 1C.`
    case 'retire':
      return `Retire ${name}: ${why}. Make sure with one more full cycle, warm cells and clean plugs; if that agrees, discharge it and hand it in for recycling.`
  }
}

function figures(
  { capacity, resistance }: PackLog,
  pack: Pack,
  charges: readonly NotedCharge[],
  show: Show,
): Figure[] {
  const figure = figuresIn(show)
  return [
    figure.count('charges', 'charges noted', charges.length),
    ...(capacity
      ? [
          figure.capacity('capacity', 'capacity now', capacity.now_Ah, capacity.band_Ah),
          figure.percent('ofLabel', 'of the label', capacity.now_Ah / pack.capacity_Ah),
          ...(capacity.first_Ah === undefined
            ? []
            : [figure.capacity('firstCapacity', 'when the log began', capacity.first_Ah)]),
        ]
      : []),
    ...(resistance
      ? [
          figure.resistance('cellResistance25C', 'a cell at 25 °C now', resistance.now_ohm),
          ...(resistance.first_ohm === undefined
            ? []
            : [figure.resistance('firstResistance25C', 'when the log began', resistance.first_ohm)]),
        ]
      : []),
  ]
}

/** One of the last charges, with what it told. */
function line(
  { at, charge_Ah }: NotedCharge,
  index: number,
  { readings }: PackLog,
  count: number,
  show: Show,
): string {
  const { capacity, at25C_ohm } = readings[Math.max(0, count - mostLines) + index] ?? {}
  const told = [
    `${show.capacity(charge_Ah)} put back`,
    capacity && `holds ${show.capacity(capacity.capacity_Ah)}`,
    at25C_ohm !== undefined && `${show.resistance(at25C_ohm)} a cell at 25 °C`,
  ]
  return `${at.toISOString().slice(0, 10)}: ${told.filter(Boolean).join(', ')}.`
}

/** Where there is a line to draw: two readings or more. */
function pictures(
  name: string,
  pack: Pack,
  charges: readonly NotedCharge[],
  { readings }: PackLog,
  show: Show,
): readonly Chart[] {
  const points = charges.map(({ at }, index) => {
    const { capacity, at25C_ohm } = readings[index] ?? {}
    return {
      at,
      ...(capacity && { capacity_Ah: capacity.capacity_Ah }),
      cellResistance_ohm: at25C_ohm,
    }
  })
  const many = (key: 'capacity_Ah' | 'cellResistance_ohm') => points.filter(point => key in point).length > 1
  if (!many('capacity_Ah') && !many('cellResistance_ohm')) return []
  return [
    logChart({
      pack: english(show.mark).own(name),
      points,
      retire_Ah: capacityLeft.value.retire * pack.capacity_Ah,
      locale: english(show.mark),
    }),
  ]
}
