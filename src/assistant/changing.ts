// Changes something that is kept, and notes who changed it: so that it can be told, and taken back.

import type { Author, HouseRules, Memory, NotedChange, Worked } from '../memory/memory.ts'
import type { Context } from './context.ts'

/** `work` uses only the memory that it is handed; what it changes is noted with it or, where it fails, not made. */
export async function changing<T>(
  context: Context,
  work: (memory: Memory) => Promise<Worked<T>>,
  undoes?: NotedChange,
): Promise<T> {
  const community = context.community.id
  let rules: HouseRules | undefined
  const result = await context.memory.history.noting(
    authorOf(context),
    async memory => {
      const worked = await work(memory)
      if (worked.change?.of === 'rules') rules = await memory.house.rules(community)
      return worked
    },
    undoes,
  )
  const changed = rules
  // Known from the change itself: no reading that comes late may leave a tightened limit unknown.
  if (changed) await context.afterwards(async () => context.lookup.know(community, changed))
  return result
}

const authorOf = ({ asker, community, now = new Date() }: Context): Author => ({
  community: community.id,
  person: asker.id,
  name: asker.name,
  at: now,
})
