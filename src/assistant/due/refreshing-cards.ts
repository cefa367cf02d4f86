// Brings the cards of communities up to date, again and again.

import type { NewDue } from '../../memory/due.ts'
import type { Memory } from '../../memory/memory.ts'
import type { Cards } from '../cards.ts'
import type { Doing } from './due-loop.ts'

/** A card is edited as soon as something changes, or a minute after its last edit; this mends what failed then, or a crash or a new version left. */
const again_ms = 15 * 60_000

const dueOf = (community: string, dueAt: Date): NewDue => ({
  id: `cards ${community}`,
  kind: 'cards',
  person: '',
  place: community,
  body: {},
  dueAt,
})

interface RefreshingCards extends Doing {
  /** Makes those of the community due; false where it has none. */
  soon(community: string, clock: () => Date): Promise<boolean>
}

export function refreshingCards(cards: Cards, { answers, due }: Pick<Memory, 'answers' | 'due'>): RefreshingCards {
  const hasAny = async (community: string) => (await answers.list(community)).length > 0
  return {
    begin: async now => {
      for (const community of await answers.communities()) await due.put(dueOf(community, now))
    },
    soon: async (community, clock) => {
      if (!(await hasAny(community))) return false
      await due.put(dueOf(community, clock()))
      return true
    },
    work: async ({ place: community }, now) => {
      const next = await cards.refresh(community)
      return (await hasAny(community)) ? { again: next ?? new Date(now.getTime() + again_ms) } : undefined
    },
  }
}
