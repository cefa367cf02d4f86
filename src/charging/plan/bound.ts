// What no plan can beat: how many packs can be ready, and how little they can wait together.

import { energyTolerance_Wh, type Hookup, type Session, type Worth } from './model.ts'

const rounds = 80

/**
 * No plan that runs each port in one of `ways` is better. `reached` is the worth of some plan: the closer, the
 * sharper the bound. Sharing of power is left out, so the bound may be better than any plan.
 */
export function boundOf(session: Session, ways: readonly (readonly Hookup[])[], reached: Worth): Worth {
  const duration_min = ways.map(hookups => session.counts.map((_, kind) => shortest(hookups, kind)))
  const ready = mostReady(session, ways, duration_min)
  if (ready < reached.ready) throw new RangeError('the bound lies below a plan')
  if (ready > reached.ready) return { ready, wait_min: 0 }
  const wait_min = leastWait(session, duration_min, ready, reached.wait_min)
  return { ready, wait_min: Math.min(reached.wait_min, Math.ceil(wait_min - 1e-6)) }
}

const shortest = (hookups: readonly Hookup[], kind: number): number =>
  Math.min(
    Number.POSITIVE_INFINITY,
    ...hookups.map(({ jobs }) => jobs[kind]?.duration_min ?? Number.POSITIVE_INFINITY),
  )

const leastEnergy = (hookups: readonly Hookup[], kind: number): number =>
  Math.min(
    Number.POSITIVE_INFINITY,
    ...hookups.map(({ jobs }) => jobs[kind]?.energy_Wh ?? Number.POSITIVE_INFINITY),
  )

/** The shortest charges fill the time of the ports, those of the least energy empty the sources. */
function mostReady(
  { counts, deadline_min, sources, wanted }: Session,
  ways: readonly (readonly Hookup[])[],
  duration_min: readonly (readonly number[])[],
): number {
  const most = (budget: number, price: readonly number[]) => mostWithin(budget, price, counts)
  const leastOf = (prices: readonly (readonly number[])[]) =>
    counts.map((_, kind) => Math.min(...prices.map(price => price[kind] as number)))
  const energy_Wh = sources.map((_, source) =>
    counts.map((_, kind) =>
      leastEnergy(
        ways.flat().filter(way => way.source === source),
        kind,
      ),
    ),
  )
  const held_Wh = sources.map(source => source.energy_Wh + energyTolerance_Wh)
  return Math.min(
    wanted,
    most(deadline_min * ways.length, leastOf(duration_min)),
    sumOf(duration_min.map(port => most(deadline_min, port))),
    most(sumOf(held_Wh), leastOf(energy_Wh)),
    sumOf(energy_Wh.map((price, source) => most(held_Wh[source] as number, price))),
  )
}

/** How many packs, the cheapest first, a budget pays for. */
function mostWithin(budget: number, price: readonly number[], counts: readonly number[]): number {
  let left = budget
  let most = 0
  for (const next of cheapestFirst(price, counts)) {
    if (next === Number.POSITIVE_INFINITY || next > left) break
    left -= next
    most++
  }
  return most
}

const cheapestFirst = (price: readonly number[], counts: readonly number[]): number[] =>
  counts.flatMap((count, kind) => Array<number>(count).fill(price[kind] as number)).sort((a, b) => a - b)

/**
 * Least sum of ready times of `ready` packs. The pack that is n-th from the end of a port adds n times its duration;
 * each such place takes the pack that gains most at given prices, and the prices are raised on packs that
 * too few places take (Lagrangian relaxation of the assignment, by subgradient steps).
 */
function leastWait(
  { counts, deadline_min }: Session,
  duration_min: readonly (readonly number[])[],
  ready: number,
  reached_min: number,
): number {
  const places = duration_min.map(port =>
    mostWithin(
      deadline_min,
      port,
      counts.map(count => Math.min(count, ready)),
    ),
  )
  let price = counts.map((_, kind) => Math.min(...duration_min.map(port => port[kind] as number)))
  price = price.map(value => (Number.isFinite(value) ? value : 1e9))
  let best = 0
  let pace = 1
  let idle = 0
  for (let round = 0; round < rounds; round++) {
    const { wait_min, shortage } = relaxed(
      counts,
      duration_min,
      places,
      Math.min(ready, sumOf(places)),
      price,
    )
    if (wait_min > best) {
      best = wait_min
      idle = 0
    } else if (++idle === 4) {
      pace /= 2
      idle = 0
    }
    const norm = shortage.reduce((sum, value) => sum + value * value, 0)
    if (norm === 0 || best > reached_min - 1 + 1e-6) break
    const step = (pace * (reached_min - wait_min)) / norm
    price = price.map((value, kind) => value + step * (shortage[kind] as number))
  }
  return best
}

/** The relaxed problem at given prices: its value, and for each kind how many packs more are wanted than placed. */
function relaxed(
  counts: readonly number[],
  duration_min: readonly (readonly number[])[],
  places: readonly number[],
  ready: number,
  price: readonly number[],
) {
  const shortage = counts.map(() => 0)
  let wait_min = 0
  const byPrice = counts.map((_, kind) => kind).sort((a, b) => (price[a] as number) - (price[b] as number))
  let left = ready
  for (const kind of byPrice) {
    const taken = Math.min(left, counts[kind] as number)
    left -= taken
    wait_min += taken * (price[kind] as number)
    shortage[kind] = taken
  }
  duration_min.forEach((port, index) => {
    for (let fromEnd = 1; fromEnd <= (places[index] as number); fromEnd++) {
      let gain = 0
      let taker = -1
      for (let kind = 0; kind < counts.length; kind++) {
        const value = fromEnd * (port[kind] as number) - (price[kind] as number)
        if (value >= gain) continue
        gain = value
        taker = kind
      }
      if (taker < 0) break
      wait_min += gain
      shortage[taker] = (shortage[taker] as number) - 1
    }
  })
  return { wait_min, shortage }
}

const sumOf = (values: readonly number[]): number => values.reduce((sum, value) => sum + value, 0)
