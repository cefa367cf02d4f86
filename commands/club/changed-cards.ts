// Which pinned answers say otherwise once rules change: told before they are changed.

import { isDeepStrictEqual } from 'node:util'
import type { Context } from '../../src/assistant/context.ts'
import type { Figure, Reply, Verdict } from '../../src/assistant/reply.ts'
import type { HouseChange, HouseRules } from '../../src/memory/memory.ts'

export interface ChangedCard {
  readonly title: string
  /** What it says now and what it would say; absent where that stays. */
  readonly verdicts?: readonly [Verdict, Verdict] | undefined
  /** The first that becomes another. */
  readonly figures?: readonly [Figure, Figure] | undefined
}

export async function changedCards(
  changes: readonly HouseChange[],
  { memory, cards, community, house }: Context,
): Promise<readonly ChangedCard[]> {
  const pinned = (await memory.answers.list(community.id)).filter(({ card }) => card?.pinned)
  const changed = rulesWith(house, changes)
  const both = await Promise.all(
    pinned.map(async answer => {
      const [now, then] = [house, changed].map(rules => cards.render(community.id, answer, rules))
      return differing(answer.title, (await now) as Reply, (await then) as Reply)
    }),
  )
  return both.filter(({ verdicts, figures }) => verdicts ?? figures)
}

function differing(title: string, now: Reply, then: Reply): ChangedCard {
  const pairs = now.figures.flatMap(one => {
    const other = then.figures.find(({ key }) => key === one.key)
    return other && !isDeepStrictEqual(numbersOf(one), numbersOf(other)) ? [[one, other] as const] : []
  })
  const [before = 'go', after = 'go'] = [now.verdict, then.verdict]
  return { title, verdicts: before === after ? undefined : [before, after], figures: pairs[0] }
}

const numbersOf = ({ value, low, high }: Figure) => [value, low, high]

function rulesWith(rules: HouseRules, changes: readonly HouseChange[]): HouseRules {
  const changed: Record<string, unknown> = { ...rules }
  for (const change of changes) {
    const { rule } = change
    const value = change.value ?? undefined
    changed[rule] = 'chemistry' in change ? { ...(changed[rule] as object), [change.chemistry]: value } : value
  }
  return changed as HouseRules
}
