// What no plan can beat: how many packs can be ready, and how little they can wait together.

import { sumOf } from '../numbers/sum.ts'
import { energyTolerance_Wh, type Hookup, lasts_min, type Session, type Worth } from './model.ts'
import { relaxedBound } from './relaxation.ts'

/**
 * No plan that runs each port in one of `ways` is better than this, or than `reached`: the closer that is to the best
 * plan and the more `rounds`, the sharper the bound.
 */
export function boundOf(session: Session, ways: readonly (readonly Hookup[])[], reached: Worth, rounds: number): Worth {
  const duration_min = ways.map(hookups => session.counts.map((_, kind) => shortest(hookups, kind)))
  const ready = mostReady(session, ways, duration_min, reached.ready, rounds)
  if (ready !== reached.ready) return { ready, wait_min: 0 }
  const places = placesOn(session, duration_min, ready)
  const wait_min = relaxedBound(session, ways, places, { kind: 'wait', ready }, reached.wait_min, rounds)
  return { ready, wait_min: Math.max(0, Math.min(reached.wait_min, Math.ceil(wait_min - 1e-6))) }
}

/** How many of the shortest charges each port has the time for, at most `ready`. */
const placesOn = ({ counts, deadline_min }: Session, duration_min: readonly (readonly number[])[], ready: number) =>
  duration_min.map(port => Math.min(ready, mostWithin(deadline_min, port, counts)))
const shortest = (hookups: readonly Hookup[], kind: number): number =>
  Math.min(...hookups.map(({ jobs }) => lasts_min(jobs[kind])))
const leastEnergy = (hookups: readonly Hookup[], kind: number): number =>
  Math.min(...hookups.map(({ jobs }) => jobs[kind]?.energy_Wh ?? Number.POSITIVE_INFINITY))

/** The relaxation where counting alone leaves hope for more than `reached`. */
function mostReady(
  session: Session,
  ways: readonly (readonly Hookup[])[],
  duration_min: readonly (readonly number[])[],
  reached: number,
  rounds: number,
): number {
  const counted = mostByCount(session, ways, duration_min)
  if (counted <= reached) return counted
  const places = placesOn(session, duration_min, counted)
  const relaxed = relaxedBound(session, ways, places, { kind: 'ready' }, -reached, rounds)
  return Math.min(counted, Math.floor(-relaxed + 1e-6))
}

/** The shortest charges fill the time of the ports, those of the least energy empty the sources. */
function mostByCount(
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
