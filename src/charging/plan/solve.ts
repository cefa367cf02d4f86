// The plan of a session: proven best for a field bag, good with a bound for more.

import { boundOf } from './bound.ts'
import { combinationCount, combinationsOf, hasPower } from './combinations.ts'
import { dealExactly } from './exact.ts'
import { dealGreedily, dealRoughly } from './greedy.ts'
import { type Deal, type Hookup, type Hookups, isBetter, type Session, type SessionPlan, type Worth } from './model.ts'
import { multisetsOf, splitCount } from './multisets.ts'

/** Beyond these a proof takes too long: twelve packs all different, and three ports with a dozen hookups each. */
const mostSplits = 3 ** 12
const mostCombinations = 2500

/**
 * The best plan by `Worth`: the most packs ready by the deadline (no more than wanted), then the least sum of
 * the times at which they are ready. Exact for up to twelve packs and three ports, and wherever the bag is as simple
 * because its packs are alike; beyond that a good plan with a bound on how much better any other can be.
 */
export function solveSession(session: Session): SessionPlan {
  const small = splitCount(session.counts) <= mostSplits && combinationCount(session) <= mostCombinations
  return small ? solveExactly(session) : solveWell(session)
}

/** Rounds of the bound: quick where it only tells which combinations are worth a look, long where it is stated. */
const quickRounds = 60
const statedRounds = 600

/** Looks at the combinations of hookups by their bounds, the best first, until no bound is better than the best plan. */
function solveExactly(session: Session): SessionPlan {
  const choices = multisetsOf(session.counts)
  const combinations = combinationsOf(session)
  let best = bestOf(session, combinations)
  const hopeful = combinations
    .map(hookups => ({ hookups, bound: boundOf(session, asWays(hookups), best.deal, quickRounds) }))
    .sort((a, b) => byWorth(a.bound, b.bound))
  for (const { hookups, bound } of hopeful) {
    if (!isBetter(bound, best.deal)) break
    const deal = dealExactly(session, hookups, choices)
    if (isBetter(deal, best.deal)) best = { hookups, deal }
  }
  return planOf(best.hookups, best.deal, best.deal)
}

/** Mends the deals of the few combinations whose first deals are best, and takes the best. */
function bestOf(session: Session, combinations: readonly Hookups[]): { hookups: Hookups; deal: Deal } {
  return combinations
    .map(hookups => ({ hookups, rough: dealRoughly(session, hookups) }))
    .sort((a, b) => byWorth(a.rough, b.rough))
    .slice(0, 3)
    .map(({ hookups }) => ({ hookups, deal: dealGreedily(session, hookups) }))
    .reduce((a, b) => (isBetter(b.deal, a.deal) ? b : a))
}

const byWorth = (a: Worth, b: Worth): number => (isBetter(a, b) ? -1 : isBetter(b, a) ? 1 : 0)

/** Beyond this many not all combinations of hookups are tried in turn. */
const mostTried = 600

function solveWell(session: Session): SessionPlan {
  const tried = combinationCount(session) <= mostTried ? combinationsOf(session) : startsOf(session)
  const { hookups, deal } = bestOf(session, tried)
  return planOf(hookups, deal, boundOf(session, session.ports, deal, statedRounds))
}

/** Where changing one port at a time ends that started with all off, and with all on their least. */
function startsOf(session: Session): Hookups[] {
  const off: Hookups = session.ports.map(() => undefined)
  const least: Hookups = session.ports.map(ways => leastPower(ways))
  return [off, ...(hasPower(session, least) ? [least] : [])].map(start => climbed(session, start))
}

function climbed(session: Session, start: Hookups): Hookups {
  let best = { hookups: start, deal: dealRoughly(session, start) as Worth }
  for (let better = true; better; ) {
    better = false
    for (const [port, ways] of session.ports.entries()) {
      for (const way of ways) {
        const hookups = best.hookups.with(port, way)
        if (!hasPower(session, hookups)) continue
        const deal = dealRoughly(session, hookups)
        if (!isBetter(deal, best.deal)) continue
        best = { hookups, deal }
        better = true
      }
    }
  }
  return best.hookups
}

const leastPower = (ways: readonly Hookup[]): Hookup | undefined =>
  ways.reduce<Hookup | undefined>(
    (least, way) => (least === undefined || way.power_W < least.power_W ? way : least),
    undefined,
  )

const asWays = (hookups: Hookups): Hookup[][] => hookups.map(hookup => (hookup ? [hookup] : []))

const planOf = (hookups: Hookups, deal: Deal, { ready, wait_min }: Worth): SessionPlan => ({
  ...deal,
  hookups,
  bound: { ready, wait_min },
})
