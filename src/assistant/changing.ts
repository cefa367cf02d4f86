// Changes something that is kept, and notes who changed it: so that it can be told, and taken back.

import type { Author, Memory, NotedChange, Worked } from '../memory/memory.ts'
import type { Context } from './context.ts'

/** `work` uses only the memory that it is handed; what it changes is noted with it or, where it fails, not made. */
export const changing = <T>(
  context: Context,
  work: (memory: Memory) => Promise<Worked<T>>,
  undoes?: NotedChange,
): Promise<T> => context.memory.history.noting(authorOf(context), work, undoes)

const authorOf = ({ asker, community, now = new Date() }: Context): Author => ({
  community: community.id,
  person: asker.id,
  name: asker.name,
  at: now,
})
