// Plans a field session: which pack on which port, fed by what, set how, from when to when; and what is left out and why.

import { sumOf } from '../numbers/sum.ts'
import { feedsOf, stopOf } from './budget.ts'
import type {
  FieldPlan,
  FieldSession,
  FieldSource,
  LeftPacks,
  Pace,
  PackGroup,
  PlannedCharge,
  SetCharge,
  SourceUse,
  WhyLeft,
} from './field.ts'
import { energiesOn, energyTolerance_Wh, type Session, type SessionPlan } from './model.ts'
import { prepare, type SetHookup } from './prepare.ts'
import { solveSession } from './solve.ts'
import { type Stand, standOf } from './stand.ts'

/**
 * The plan with the most packs ready in time (no more than the flights wanted), and of those the one with the least
 * waiting: the sum of the times at which the packs are ready. Every charge counts with the long end of its band; each
 * port stays on one source and keeps within its share of that source's power, so that a charge that ends early or
 * late overloads nothing. Never throws for what a pilot can own: what cannot be charged is left out with its reason.
 */
export function planField(field: FieldSession): FieldPlan {
  const plan = planUnshared(field)
  const { shared_W = Number.POSITIVE_INFINITY, chargers } = field
  if (plan.output_W <= shared_W) return plan
  const share_W = shared_W / chargers.length
  const held = planUnshared({ ...field, chargers: chargers.map(charger => ({ ...charger, power_W: share_W })) })
  return { ...held, output_W: plan.output_W, share_W }
}

/** As if every output had the watts of its charger for itself. */
function planUnshared(field: FieldSession): FieldPlan {
  const stands = field.packs.map(group => standOf(field, group))
  const fullAlready = stands.map(({ kind }, group) => (kind === 'full' ? sizeOf(field, group) : 0))
  const ready = sumOf(fullAlready)
  const groups = [...stands.keys()].filter(group => stands[group]?.kind === 'here')
  const wanted = Math.max(0, Math.min(sumOf(groups.map(index => sizeOf(field, index))), (field.flights ?? 1e9) - ready))
  const { session, solved, pace } = atTheRightPace(field, groups, wanted)
  const charges = chargesOf(field, groups, solved)
  return {
    ready: ready + solved.ready,
    wait_min: solved.wait_min,
    bound: { ...solved.bound, ready: ready + solved.bound.ready },
    pace,
    charges,
    output_W: outputOf(charges, field),
    fullAlready,
    left: [
      ...stands.flatMap((stand, group) => refused(stand, group, sizeOf(field, group))),
      ...leftOut(session, solved, groups, charges, wanted),
    ].sort((a, b) => a.group - b.group),
    sources: field.sources.map((_, source) => useOf(field, source, session, solved, charges)),
  }
}

/** Calm, unless only a hurry has more of the wanted packs ready by the time that was asked for. */
function atTheRightPace(field: FieldSession, groups: readonly number[], wanted: number) {
  const at = (pace: Pace) => {
    const session = prepare(field, groups, wanted, pace)
    return { session, solved: solveSession(session), pace }
  }
  const calm = at('calm')
  if (calm.solved.ready >= wanted || field.readyBy_s === undefined) return calm
  const hurried = at('hurried')
  return hurried.solved.ready > calm.solved.ready ? hurried : calm
}

/** The largest charge of each output, at its end. */
const outputOf = (charges: readonly PlannedCharge[], { chargers }: FieldSession): number =>
  sumOf(
    chargers.map((_, port) =>
      Math.max(0, ...charges.map(one => (one.port === port ? one.setting.current_A * one.setting.cutoffPack_V : 0))),
    ),
  )

const sizeOf = ({ packs }: FieldSession, group: number): number => (packs[group] as PackGroup).count
const refused = ({ kind, found }: Stand, group: number, count: number): LeftPacks[] =>
  found && (kind === 'never' || kind === 'nowhere') ? [{ group, count, why: { kind, found } }] : []

function chargesOf(field: FieldSession, groups: readonly number[], solved: SessionPlan): PlannedCharge[] {
  const used = groups.map(() => 0)
  const charges = solved.order.flatMap((kinds, port) => {
    const hookup = solved.hookups[port] as SetHookup | undefined
    let free_min = 0
    return kinds.map(kind => {
      const start_min = free_min
      const job = hookup?.jobs[kind]
      free_min += job?.duration_min ?? 0
      return { kind, port, start_s: start_min * 60, end_s: free_min * 60, hookup: hookup as SetHookup }
    })
  })
  return charges
    .sort((a, b) => a.start_s - b.start_s || a.port - b.port)
    .map(({ kind, hookup, ...when }) => {
      const number = (used[kind] as number) + 1
      used[kind] = number
      return {
        group: groups[kind] as number,
        number,
        ...when,
        source: field.sources.length > 0 ? hookup.source : undefined,
        ...asData(hookup.charges[kind] as SetCharge),
        energy_Wh: hookup.jobs[kind]?.energy_Wh as number,
      }
    })
}

/** A plan may be made by a worker: what it tells of a battery that feeds is its numbers, and no longer how it drains. */
function asData({ permit, setting }: SetCharge): SetCharge {
  const fed = setting.feed && { ...setting.feed, store: undefined }
  return { permit, setting: { ...setting, feed: fed, input: setting.input && { ...setting.input, feed: fed } } }
}

function leftOut(
  session: Session,
  solved: SessionPlan,
  groups: readonly number[],
  charges: readonly PlannedCharge[],
  wanted: number,
): LeftPacks[] {
  const energies = energiesOn(session, solved.hookups)
  const left_Wh = session.sources.map(({ energy_Wh }, source) =>
    solved.order.reduce((left, kinds, port) => {
      if (solved.hookups[port]?.source !== source) return left
      return left - sumOf(kinds.map(kind => energies[source]?.[kind] as number))
    }, energy_Wh),
  )
  const whyNot = (kind: number): WhyLeft => {
    if (solved.ready >= wanted) return { kind: 'not wanted' }
    const ways = session.ports.flat().filter(way => way.jobs[kind])
    if (ways.length === 0) return { kind: 'power' }
    const holds = ways.some(
      ({ source, jobs }) => (jobs[kind]?.energy_Wh ?? 0) <= (left_Wh[source] as number) + energyTolerance_Wh,
    )
    if (!holds) return { kind: 'energy' }
    return { kind: Number.isFinite(session.deadline_min) ? 'time' : 'power' }
  }
  return groups.flatMap((group, kind) => {
    const count = (session.counts[kind] as number) - charges.filter(charge => charge.group === group).length
    return count > 0 ? [{ group, count, why: whyNot(kind) }] : []
  })
}

function useOf(
  field: FieldSession,
  source: number,
  session: Session,
  solved: SessionPlan,
  charges: readonly PlannedCharge[],
): SourceUse {
  const { power_W, energy_Wh } = session.sources[source] as Session['sources'][number]
  const ports = solved.hookups.flatMap((hookup, port) =>
    hookup?.source === source && (solved.order[port] as readonly number[]).length > 0 ? [hookup] : [],
  )
  const chargers = field.chargers.filter((_, port) => solved.hookups[port]?.source === source)
  const feeds = feedsOf(field.sources[source] as FieldSource, chargers, { house: field.around.house, lead: field.lead })
  const stop = stopOf(feeds.filter(feed => feed !== undefined))
  return {
    taken_Wh: sumOf(charges.filter(charge => charge.source === source).map(charge => charge.energy_Wh)),
    available_Wh: energy_Wh,
    drawn_W: sumOf(ports.map(hookup => hookup.power_W)),
    most_W: power_W,
    stop,
  }
}
