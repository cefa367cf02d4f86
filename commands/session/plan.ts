// A field session: which pack on which charger, set how, from when to when, so that most are ready soonest.

import { type Asked, type Deed, optional, required, session } from '../../src/assistant/command.ts'
import type { Context } from '../../src/assistant/context.ts'
import { figure } from '../../src/assistant/quantified.ts'
import { sumOf } from '../../src/charging/numbers/sum.ts'
import type { FieldPlan, FieldSession, FieldSource } from '../../src/charging/plan/field.ts'
import { standOf } from '../../src/charging/plan/stand.ts'
import type { Permit } from '../../src/charging/situation/permit.ts'
import type { Charger } from '../../src/charging/things/charger.ts'
import type { HouseLimits } from '../../src/charging/things/house-limits.ts'
import { socOf, startOf } from '../../src/charging/things/level.ts'
import { sessionChargersKind, sessionPacksKind, sessionSourcesKind } from '../../src/language/kinds/session-kinds.ts'
import { clockKind, countKind, durationKind, temperatureKind } from '../../src/language/kinds/values.ts'
import { lengthBetween_s } from '../../src/language/quantities/clock.ts'
import type { StandingSource } from '../../src/language/things/standing.ts'
import { byLog, recallFromLog } from '../log/log-recall.ts'
import { ofCharge } from '../shared/charging.ts'
import { leadTold, ofLead } from '../shared/own-lead.ts'

const takes = {
  packs: required(sessionPacksKind),
  chargers: optional(sessionChargersKind),
  ports: optional(countKind),
  sources: optional(sessionSourcesKind),
  by: optional(durationKind),
  start: optional(clockKind),
  ready: optional(clockKind),
  flights: optional(countKind),
  temperature: optional(temperatureKind),
  apart: ofCharge.apart,
  ...ofLead,
  ...byLog,
}

type AskedPlan = Asked<typeof takes>

export const plan = session({
  name: 'plan',
  shelf: 'charge plan',
  takes,
  examples: [
    'plan packs: 4x 3S 720 LiHV at 3.7V; 2x 2S 450 LiPo at 20% chargers: 2x 0.3/0.8/1.5/3A 60W 1-5S 10-26V sources: 4S 5000 Li-ion by: 2h30 flights: 6',
    'plan packs: 6x 6S 1300 LiPo chargers: 2x 0.1-10A by 0.1 200W sources: car 20A engine running start: 7:30 ready: 10:00',
    'plan packs: 6S 2200 LiPo at 2.2A; 3S 1500 LiPo at 1.5A chargers: 0.1-10A by 0.1 100W ports: 2',
    'plan packs: 3x 1S 550 LiHV; 2x 3S 850 LiPo chargers: 0.1-2A by 0.1 20W; 0.3/0.8/1.5/3A 50W sources: power bank 74Wh PD 45W; PD 65W by: 1h30',
  ],
  recall: recallFromLog,
  situations: (asked, context) => {
    const field = fieldOf(asked, context)
    return field.packs.map(group => standOf(field, group).situation)
  },
  compute: async (permits, asked, context) => {
    const field = fieldOf(asked, context)
    return { ...(await context.plan(field)), field, permits }
  },
  deeds: deedsOf,
  figures: ({ charges, ready, left, wait_min, sources, output_W }) => {
    const ends_s = charges.map(({ end_s }) => end_s)
    return [
      figure.count('packsReady', ready),
      figure.count('packsLeft', sumOf(left.map(({ count }) => count))),
      figure.power('outputPower', output_W > 0 ? output_W : undefined),
      figure.duration('firstReady', ofSome(Math.min(...ends_s))),
      figure.duration('lastReady', ofSome(Math.max(...ends_s))),
      figure.duration('meanWait', ofSome((wait_min * 60) / charges.length)),
      ...sources.flatMap(({ taken_Wh, available_Wh, drawn_W }, index) => [
        figure.power('source#Power', drawn_W, undefined, index + 1),
        figure.energy('source#Energy', taken_Wh, undefined, index + 1),
        figure.energy('source#Left', ofSome(available_Wh - taken_Wh), undefined, index + 1),
      ]),
    ]
  },
})

/** What an empty list or a source without end has no number of. */
const ofSome = (value: number): number | undefined => (Number.isFinite(value) ? value : undefined)

export interface Planned extends FieldPlan {
  readonly field: FieldSession
  readonly permits: readonly (Permit | undefined)[]
}

/** Where nobody tells of a charger: one that gives each pack what it may take. */
const anyCharger: Charger = { currents: { kind: 'range', from_A: 0.1, to_A: 40, increment_A: 0.1 } }

/** One for each output. */
function outputsOf({ chargers, ports = 1 }: AskedPlan): readonly Charger[] {
  const each = chargers?.flatMap(({ count, item }) => Array.from({ length: count }, () => item)) ?? [anyCharger]
  const [only, ...others] = each as [Charger, ...Charger[]]
  return others.length > 0 ? each : Array.from({ length: ports }, () => only)
}

function fieldOf(asked: AskedPlan, { house, dangers, doubts, learned }: Context): FieldSession {
  const { packs, sources = [], by, start, ready, flights, temperature, apart } = asked
  return {
    packs: packs.map(({ count, item }) => ({ ...item, count })),
    chargers: outputsOf(asked),
    shared_W: asked.chargers?.length === 1 && (asked.ports ?? 1) > 1 ? asked.chargers[0]?.item.power_W : undefined,
    sources: sources.flatMap(({ count, item }) => Array.from({ length: count }, () => fieldSource(item, house))),
    lead: leadTold(asked),
    readyBy_s: by ?? (start && ready && lengthBetween_s(start, ready)),
    flights,
    around: { house, dangers, doubts, learned },
    temperature_C: temperature,
    apart_V: apart,
  }
}

function fieldSource({ source, charged }: StandingSource, house: HouseLimits): FieldSource {
  if (!charged) return { source }
  if (source.kind !== 'battery') return { source, soc: charged.kind === 'soc' ? charged.soc : undefined }
  const { chemistry } = source.pack
  const stands = startOf(charged, chemistry, house)
  return { source, soc: socOf(stands, chemistry) }
}

/** Every charge is judged; where there is none, what is left out is. */
function deedsOf({ charges, left, permits }: Planned): readonly Deed[] {
  const atOnce = new Set(charges.map(({ port }) => port)).size
  const short = sumOf(left.map(({ count, why }) => (lacking.includes(why.kind) ? count : 0)))
  const [first] = permits.filter(permit => permit?.situation.act === 'charge')
  const deeds = charges.map(({ permit, setting, start_s, end_s }) => ({
    permit,
    set_A: setting.current_A,
    input_A: setting.input_A,
    takes_s: end_s - start_s,
    atOnce,
    short,
  }))
  return deeds.length === 0 && first ? [{ permit: first, short }] : deeds
}

const lacking: readonly string[] = ['time', 'energy', 'power']
