// The plan of a session: proven best for a field bag, good with a bound for more.

import { boundOf } from './bound.ts'
import { combinationCount, combinationsOf, hasPower } from './combinations.ts'
import { dealExactly } from './exact.ts'
import { dealGreedily, dealRoughly } from './greedy.ts'
import {
  type Deal,
  type Hookup,
  type Hookups,
  isBetter,
  type Session,
  type SessionPlan,
  type Worth,
} from './model.ts'
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

/** Looks at the combinations of hookups by their bounds, the best first, until no bound is better than the best plan. */
function solveExactly(session: Session): SessionPlan {
  const choices = multisetsOf(session.counts)
  const combinations = combinationsOf(session)
  const rough = combinations.map(hookups => ({ hookups, deal: dealGreedily(session, hookups) }))
  let best = rough.reduce((a, b) => (isBetter(b.deal, a.deal) ? b : a))
  const hopeful = rough
    .map(({ hookups, deal }) => ({ hookups, bound: boundOf(session, asWays(hookups), deal) }))
    .sort((a, b) => (isBetter(a.bound, b.bound) ? -1 : isBetter(b.bound, a.bound) ? 1 : 0))
  for (const { hookups, bound } of hopeful) {
    if (!isBetter(bound, best.deal)) break
    const deal = dealExactly(session, hookups, choices)
    if (isBetter(deal, best.deal)) best = { hookups, deal }
  }
  return planOf(best.hookups, best.deal, best.deal)
}

/** Changes the hookup of one port at a time as long as the deal gets better, from all off and from all on the least. */
function solveWell(session: Session): SessionPlan {
  const off: Hookups = session.ports.map(() => undefined)
  const least: Hookups = session.ports.map(ways => leastPower(ways))
  const starts = [off, ...(hasPower(session, least) ? [least] : [])]
  const plans = starts.map(start => {
    const hookups = climbed(session, start)
    return { hookups, deal: dealGreedily(session, hookups) }
  })
  const { hookups, deal } = plans.reduce((a, b) => (isBetter(b.deal, a.deal) ? b : a))
  return planOf(hookups, deal, boundOf(session, session.ports, deal))
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
