// A field session: which pack on which charger, set how, from when to when, so that most are ready soonest.

import { defineCommand, type Inputs, optional, required } from '../../src/assistant/old-command.ts'
import type { Answer, Figure, FollowUp } from '../../src/assistant/reply.ts'
import { sessionCautions } from '../../src/cautions/session.ts'
import type { FieldPlan, FieldSession, FieldSource, LeftPacks } from '../../src/charging/plan/field.ts'
import { planField } from '../../src/charging/plan/plan.ts'
import { socAt } from '../../src/charging/things/curve.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { planChart } from '../../src/charts/plan-chart.ts'
import { english } from '../../src/ground/locale.ts'
import type { Show } from '../../src/ground/show.ts'
import { countKind, durationKind } from '../../src/language/kinds/values.ts'
import type { StandingSource } from '../../src/language/things/standing.ts'
import { cellTemperature } from '../shared/charge-options.ts'
import { figuresIn } from '../shared/figure.ts'
import { followUp, written } from '../shared/follow-up.ts'
import { levelsOf } from '../shared/levels.ts'
import { sourceAssumed } from '../supply/source-words.ts'
import { sessionChargersKind, sessionPacksKind, sessionSourcesKind } from './session-kinds.ts'
import {
  chargeLine,
  chargerLines,
  leftLines,
  leftWords,
  namesIn,
  provenWords,
  type SessionNames,
  settingText,
  sourceLines,
  whyWords,
} from './session-words.ts'

const options = {
  packs: required(sessionPacksKind, {
    description:
      'the packs, with ";" between them, "4x" before four alike and "at 3.7V" or "at 20%" behind them',
    phrase: text => text,
  }),
  chargers: required(sessionChargersKind, {
    description: 'the chargers, with ";" between them; one with two outputs is written "2x"',
    phrase: text => `on ${text}`,
  }),
  sources: optional(sessionSourcesKind, {
    description: 'what feeds the chargers, with ";" between them',
    phrase: text => `fed by ${text}`,
  }),
  by: optional(durationKind, {
    description: 'the time from now by which they must be ready',
    phrase: text => `ready within ${text}`,
  }),
  flights: optional(countKind, {
    description: 'how many packs are wanted ready; all when not said',
    phrase: text => `for ${text} flights`,
  }),
  temperature: cellTemperature,
}

type Asked = Inputs<typeof options>

export const plan = defineCommand({
  name: 'plan',
  summary: 'A field session: the order, charger, setting and times for a bag of packs.',
  options,
  examples: [
    'plan packs: 4x 3S 720 LiHV at 3.7V; 2x 2S 450 LiPo at 20% chargers: 2x 0.5/1/2/4A 80W 1-4S 9-20V sources: 4S 5000 Li-ion by: 2h30 flights: 6',
    'plan packs: 6x 6S 1300 LiPo chargers: 2x 0.1-10A by 0.1 200W sources: car 20A engine running',
    'plan packs: 3x 1S 550 LiHV; 2x 3S 850 LiPo chargers: 0.1-2A by 0.1 20W; 0.5/1/2/4A 50W sources: power bank 74Wh PD 45W; PD 65W by: 1h30',
  ],
  plainWords: ['plan', 'field session', 'in what order', 'which order', 'what order', 'schedule'],
  answer: (inputs, { house, show }) => {
    const session = sessionOf(inputs, house)
    const planned = planField(session)
    const names = namesIn(session)
    return {
      verdict: verdictOf(planned),
      headline: headline(planned, session, names, show),
      figures: figuresOf(planned, names, show),
      working: [
        ...planned.charges.map(charge => chargeLine(charge, names, show)),
        ...leftLines(planned, session, show),
        ...sourceLines(planned, names, show),
        ...chargerLines(session, names),
        'Each charge counts with the long end of its time, and a minute to look at the pack and connect it (common practice).',
        'Each charger stays on one source and within its share of that power through the session, so that a charge which ends early or late overloads nothing.',
        ...(planned.charges.length > 0 ? [provenWords(planned, show)] : []),
      ],
      cautions: sessionCautions(situationOf(planned, session)),
      followUps: followUps(inputs, planned),
      charts: chartsOf(planned, session, names, show),
      assumed: assumed(inputs, session, planned, show),
    }
  },
})

function sessionOf(inputs: Asked, house: HouseLimits): FieldSession {
  const { packs, chargers, sources = [], by, flights, temperature } = inputs
  return {
    packs: packs.map(({ count, item: { pack, from, unsound } }) => ({
      pack,
      count,
      from: levelsOf(pack, house, from).from,
      unsound,
    })),
    chargers: chargers.flatMap(({ count, item }) => Array.from({ length: count }, () => item)),
    sources: sources.flatMap(({ count, item }) =>
      Array.from({ length: count }, () => fieldSource(item, house)),
    ),
    limits: house,
    readyBy_s: by,
    flights,
    temperature_C: temperature,
  }
}

function fieldSource({ source, charged }: StandingSource, house: HouseLimits): FieldSource {
  if (!charged) return { source }
  if (source.kind !== 'battery') return charged.kind === 'soc' ? { source, soc: charged.soc } : { source }
  const { from } = levelsOf(source.pack, house, charged)
  return {
    source,
    soc: from.kind === 'soc' ? from.soc : socAt(source.pack.chemistry, from.perCell_V),
  }
}

function verdictOf({ charges, fullAlready, left, pace }: FieldPlan): NonNullable<Answer['verdict']> {
  if (charges.length === 0) return fullAlready.some(count => count > 0) ? 'go' : 'do not charge'
  const unwise = left.some(({ why }) => why.kind === 'unsound' || why.kind === 'refused')
  const cares = charges.some(({ setting }) => setting.verdict === 'go with care')
  return unwise || cares || pace === 'hurried' ? 'go with care' : 'go'
}

function headline(planned: FieldPlan, session: FieldSession, names: SessionNames, show: Show): string {
  const { charges, ready, left } = planned
  const wanted = Math.min(
    session.flights ?? Number.POSITIVE_INFINITY,
    sum(session.packs.map(({ count }) => count)),
  )
  const last_s = Math.max(0, ...charges.map(({ end_s }) => end_s))
  if (charges.length === 0) {
    return ready > 0 && ready >= wanted
      ? `Nothing to charge: ${packs(ready)} ${ready === 1 ? 'is' : 'are'} full already.`
      : `No pack can be charged here. ${left.length === 1 ? whyWords((left[0] as LeftPacks).why, show) : leftWords(planned, session, show)}`
  }
  const within = session.readyBy_s === undefined ? '' : `, within the ${show.duration(session.readyBy_s)}`
  const result =
    ready >= wanted
      ? `${wanted === 1 ? 'The pack is' : `All ${wanted} packs are`} ready after ${show.duration(last_s)}${within}.`
      : `${ready} of ${packs(wanted)} ${ready === 1 ? 'is' : 'are'} ready after ${show.duration(last_s)}${within}.`
  const starts = charges
    .filter(({ start_s }) => start_s === 0)
    .map(
      ({ group, number, port, setting }) =>
        `${names.pack(group, number)} on ${names.port(port)} at ${settingText(setting, show)} per cell`,
    )
  const hurry =
    planned.pace === 'hurried'
      ? ' To make the time, currents are above the recommended ones, within every limit.'
      : ''
  return `${result} Start with ${starts.join(', and ')}.${hurry} ${leftWords(planned, session, show)}`.trim()
}

const packs = (count: number): string => `${count} pack${count === 1 ? '' : 's'}`
const sum = (values: readonly number[]): number => values.reduce((total, value) => total + value, 0)

function figuresOf(
  { charges, ready, left, wait_min, sources }: FieldPlan,
  names: SessionNames,
  show: Show,
): Figure[] {
  const figure = figuresIn(show)
  const ends_s = charges.map(({ end_s }) => end_s)
  return [
    figure.count('packsReady', 'packs ready', ready),
    figure.count('packsLeft', 'packs not charged', sum(left.map(({ count }) => count))),
    ...(charges.length === 0
      ? []
      : [
          figure.duration('firstReady', 'first pack ready after', Math.min(...ends_s)),
          figure.duration('lastReady', 'last pack ready after', Math.max(...ends_s)),
          figure.duration('meanWait', 'ready on average after', (wait_min * 60) / charges.length),
        ]),
    ...sources.flatMap(({ taken_Wh, available_Wh, drawn_W }, index) => [
      figure.power(`source${index + 1}Power`, `${names.source(index)}: drawn at once, at most`, drawn_W),
      figure.energy(`source${index + 1}Energy`, `${names.source(index)}: taken, at most`, taken_Wh),
      ...(Number.isFinite(available_Wh)
        ? [
            figure.energy(
              `source${index + 1}Left`,
              `${names.source(index)}: left above its floor, at least`,
              available_Wh - taken_Wh,
            ),
          ]
        : []),
    ]),
  ]
}

function situationOf({ charges, left }: FieldPlan, { packs, sources, temperature_C }: FieldSession) {
  const refusals = left.flatMap(({ why }) => (why.kind === 'refused' ? [why.refusal.kind] : []))
  const refusal = refusals.find(kind => kind === 'damaged cell' || kind === 'overcharged cell') ?? refusals[0]
  const source = sources.find((_, index) => charges.some(charge => charge.source === index))?.source
  const pack = packs[charges[0]?.group ?? 0]?.pack
  return {
    pack,
    source,
    refusal,
    temperature_C,
    unsound: left.some(({ why }) => why.kind === 'unsound'),
    several: new Set(charges.map(({ port }) => port)).size > 1,
  }
}

function followUps(inputs: Asked, { left }: FieldPlan): FollowUp[] {
  const { by, ...timeless } = written(options, inputs)
  const { flights, ...all } = written(options, inputs)
  return [
    ...(by !== undefined && left.some(({ why }) => why.kind === 'time')
      ? [followUp('Without the time', 'plan', timeless)]
      : []),
    ...(flights !== undefined ? [followUp('All packs', 'plan', all)] : []),
  ]
}

function chartsOf({ charges }: FieldPlan, { readyBy_s }: FieldSession, names: SessionNames, show: Show) {
  if (charges.length === 0) return []
  const locale = english(show.mark)
  const rows = charges.map(({ group, number, port, setting, start_s, end_s }) => ({
    pack: locale.own(names.pack(group, number)),
    port: locale.own(names.port(port)),
    setting: locale.own(settingText(setting, show)),
    start_s,
    end_s,
  }))
  return [planChart({ charges: rows, readyBy_s, locale })]
}

function assumed(
  { packs, flights }: Asked,
  session: FieldSession,
  { fullAlready }: FieldPlan,
  show: Show,
): string[] {
  const total = sum(session.packs.map(({ count }) => count))
  const said = (holds: boolean, text: string) => (holds ? [text] : [])
  return [
    ...said(
      packs.some(({ item }) => item.from === undefined && item.unsound === undefined),
      'packs without a state are taken to be flown down to their floor',
    ),
    ...said(session.sources.length === 0, 'each charger is taken to get the power that it asks for'),
    ...said(
      session.sources.length > 0 && session.chargers.length > 1,
      'each source is taken to have a plug for every charger',
    ),
    ...said(
      (flights ?? 0) > total,
      `each pack counts for one flight; the other ${(flights ?? 0) - total} need a pack charged again after it has flown and cooled`,
    ),
    ...said(sum(fullAlready) > 0, 'packs charged to 99 % or more count as full'),
    ...[...new Set(session.sources.flatMap(({ source }) => sourceAssumed(source, show)))],
  ]
}
