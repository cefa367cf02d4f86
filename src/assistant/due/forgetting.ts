// Drops what nobody needs any longer, once a day.

import type { Memory } from '../../memory/memory.ts'
import type { Doing } from './due-loop.ts'

const once = { id: 'forgetting', kind: 'forgetting', person: '', place: '', body: {} }
const day_ms = 86_400_000

export const forgetting = (memory: Memory): Doing => ({
  begin: now => memory.due.add({ ...once, dueAt: now }),
  work: async (_, now) => {
    await memory.forgetOld(now)
    return { again: new Date(now.getTime() + day_ms) }
  },
})
