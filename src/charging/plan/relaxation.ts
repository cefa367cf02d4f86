// The session with its hard rules priced instead of kept (Lagrangian relaxation): its value lies on the good side of every plan.

import { sumOf } from '../numbers/sum.ts'
import type { Hookup, Session } from './model.ts'

/** What is minimised: the waiting of a given number of ready packs, or the packs that are ready, counted negative. */
type Goal = { readonly kind: 'wait'; readonly ready: number } | { readonly kind: 'ready' }

interface Way extends Hookup {
  /** Shares of the port's time and the source's energy that each kind takes, and of the source's power the way draws. */
  readonly time: readonly number[]
  readonly energy: readonly number[]
  readonly power: number
}

interface Prices {
  /** By kind: what a pack pays for its charge. */
  readonly packs: readonly number[]
  /** By port, and by source: what the whole of it costs. Never below 0. */
  readonly time: readonly number[]
  readonly energy: readonly number[]
  readonly power: readonly number[]
}

const patience = 20
/** Shares are small numbers beside counts of packs: this much of all packs brings them to one measure (by trial). */
const shareWeight = 1 / 3

/**
 * A lower bound of the goal over all plans that run each port in one of `ways`, no more than `reached`, which some plan
 * attains. Each port takes its best way at the prices, and each place on it the pack that gains most: the n-th from the
 * end delays n packs. Prices then rise on what is asked for too much (subgradient steps of Polyak's length); the more
 * `rounds`, the sharper.
 */
export function relaxedBound(
  session: Session,
  ports: readonly (readonly Hookup[])[],
  places: readonly number[],
  goal: Goal,
  reached: number,
  rounds: number,
): number {
  const ways = ports.map(hookups => hookups.map(hookup => wayOf(session, hookup)))
  let prices: Prices = {
    packs: session.counts.map((_, kind) => (goal.kind === 'ready' ? 1 : shortest(ports.flat(), kind))),
    time: ports.map(() => 0),
    energy: session.sources.map(() => 0),
    power: session.sources.map(() => 0),
  }
  const weight = shareWeight * sumOf(session.counts)
  let best = Number.NEGATIVE_INFINITY
  let pace = 1
  let idle = 0
  for (let round = 0; round < rounds; round++) {
    const { value, excess } = relaxed(session, ways, places, goal, prices)
    if (value > best) {
      best = value
      idle = 0
    } else if (++idle === patience) {
      pace /= 2
      idle = 0
    }
    const shares = [...excess.time, ...excess.energy, ...excess.power]
    const norm = squares(excess.packs) + weight ** 2 * squares(shares)
    if (norm === 0 || best > reached - 1 + 1e-6) break
    const step = (pace * (reached - value)) / norm
    const shareStep = step * weight ** 2
    prices = {
      packs: raised(prices.packs, excess.packs, step),
      time: raised(prices.time, excess.time, shareStep, 0),
      energy: raised(prices.energy, excess.energy, shareStep, 0),
      power: raised(prices.power, excess.power, shareStep, 0),
    }
  }
  return best
}

const squares = (values: readonly number[]): number => values.reduce((sum, value) => sum + value * value, 0)

function raised(prices: readonly number[], excess: readonly number[], step: number, least = Number.NEGATIVE_INFINITY) {
  return prices.map((price, index) => Math.max(least, price + step * (excess[index] as number)))
}

function wayOf({ deadline_min, sources }: Session, hookup: Hookup): Way {
  const { energy_Wh, power_W } = sources[hookup.source] as Session['sources'][number]
  return {
    ...hookup,
    time: hookup.jobs.map(job => (job ? shareOf(job.duration_min, deadline_min) : 0)),
    energy: hookup.jobs.map(job => (job ? shareOf(job.energy_Wh, energy_Wh) : 0)),
    power: shareOf(hookup.power_W, power_W),
  }
}

/** Finite also of nothing, so that a price can stand before it. */
const shareOf = (part: number, whole: number): number => part / Math.max(whole, 1e-9)

/** A kind that nobody can charge is priced so that nobody wants it ready. */
const unaffordable = 1e9
const shortest = (hookups: readonly Hookup[], kind: number): number =>
  Math.min(unaffordable, ...hookups.map(({ jobs }) => jobs[kind]?.duration_min ?? unaffordable))

interface Filled {
  readonly value: number
  /** By place from the end, the kind that takes it. */
  readonly takers: readonly number[]
}

/** The relaxed session at given prices: its value, and by how much each rule is broken. */
function relaxed(
  session: Session,
  ways: readonly (readonly Way[])[],
  places: readonly number[],
  goal: Goal,
  prices: Prices,
) {
  const chosen = readied(session, goal, prices.packs)
  const excess = {
    packs: chosen.taken,
    time: ways.map(() => (Number.isFinite(session.deadline_min) ? -1 : 0)),
    energy: session.sources.map(({ energy_Wh }) => (Number.isFinite(energy_Wh) ? -1 : 0)),
    power: session.sources.map(({ power_W }) => (Number.isFinite(power_W) ? -1 : 0)),
  }
  let value =
    chosen.value + dot(excess.time, prices.time) + dot(excess.energy, prices.energy) + dot(excess.power, prices.power)
  ways.forEach((portWays, port) => {
    let best: Filled = { value: 0, takers: [] }
    let way: Way | undefined
    for (const candidate of portWays) {
      const filled = filledPlaces(candidate, places[port] as number, port, goal, prices)
      if (filled.value >= best.value) continue
      best = filled
      way = candidate
    }
    if (!way) return
    value += best.value
    add(excess.power, way.source, way.power)
    for (const kind of best.takers) {
      add(excess.packs, kind, -1)
      add(excess.time, port, way.time[kind] as number)
      add(excess.energy, way.source, way.energy[kind] as number)
    }
  })
  return { value, excess }
}

const dot = (a: readonly number[], b: readonly number[]): number =>
  a.reduce((sum, x, index) => sum + x * (b[index] as number), 0)

function add(values: number[], index: number, more: number): void {
  values[index] = (values[index] as number) + more
}

/** Which packs are made ready, at what they pay: the cheapest so many, or all whose place among the ready is worth it. */
function readied({ counts, wanted }: Session, goal: Goal, price: readonly number[]) {
  const worth = goal.kind === 'ready' ? 1 : 0
  const taken = counts.map(() => 0)
  let left = goal.kind === 'ready' ? wanted : goal.ready
  let value = 0
  for (const kind of [...counts.keys()].sort((a, b) => (price[a] as number) - (price[b] as number))) {
    const each = (price[kind] as number) - worth
    if (goal.kind === 'ready' && each >= 0) break
    const packs = Math.min(left, counts[kind] as number)
    taken[kind] = packs
    value += packs * each
    left -= packs
  }
  return { value, taken }
}

function filledPlaces(way: Way, places: number, port: number, goal: Goal, prices: Prices): Filled {
  const delay = goal.kind === 'wait' ? 1 : 0
  const base = way.jobs.map((job, kind) =>
    job
      ? (prices.time[port] as number) * (way.time[kind] as number) +
        (prices.energy[way.source] as number) * (way.energy[kind] as number) -
        (prices.packs[kind] as number)
      : Number.POSITIVE_INFINITY,
  )
  const takers: number[] = []
  let value = (prices.power[way.source] as number) * way.power
  for (let fromEnd = 1; fromEnd <= places; fromEnd++) {
    let gain = 0
    let taker = -1
    for (let kind = 0; kind < base.length; kind++) {
      const duration_min = way.jobs[kind]?.duration_min ?? 0
      const cost = (base[kind] as number) + delay * fromEnd * duration_min
      if (cost >= gain) continue
      gain = cost
      taker = kind
    }
    if (taker < 0) break
    value += gain
    takers.push(taker)
  }
  return { value, takers }
}
