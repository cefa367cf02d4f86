// The assistant on its memory, as every way in needs it.

import { commands } from '../commands/index.ts'
import { type Assistant, createAssistant } from './assistant/assistant.ts'
import { describeError, type Log } from './log.ts'
import type { MemoryPlace } from './memory/connect.ts'
import type { Memory } from './memory/memory.ts'
import { openMemory } from './memory/open.ts'

export interface Opened {
  readonly assistant: Assistant
  readonly memory: Memory
}

/** Throws a MemoryError where the data folder or the database cannot be used. */
export async function openAssistant(place: MemoryPlace, log: Log): Promise<Opened> {
  const memory = await openMemory(place)
  const assistant = createAssistant({
    commands,
    memory,
    clock: () => new Date(),
    onFault: (fault, reference) => log.error({ reference, fault: describeError(fault) }, 'a question failed'),
  })
  return { assistant, memory }
}
