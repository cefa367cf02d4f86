// Drops what nobody needs any longer, once a day.

import type { Memory } from '../../memory/memory.ts'
import { day_ms, forgetOld } from '../../memory/retention.ts'
import type { Doing } from './due-loop.ts'

const once = { id: 'forgetting', kind: 'forgetting', person: '', place: '', body: {} }

export const forgetting = (memory: Memory): Doing => ({
  begin: now => memory.due.add({ ...once, dueAt: now }),
  work: async (_, now) => {
    await forgetOld(memory, now)
    return { again: new Date(now.getTime() + day_ms) }
  },
})
