// An assistant in an empty demo club, where no clock is known and nothing is left to chance: what it says is the same each time.

import { commands } from '../../commands/index.ts'
import { type Assistant, createAssistant } from '../../src/assistant/running/assistant.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { stockDemoKit } from '../../src/room/demo-club.ts'

/** Throws what goes wrong. */
export async function withDemoAssistant<T>(work: (assistant: Assistant) => Promise<T>): Promise<T> {
  const memory = await openMemory({ dataFolder: ':memory:' })
  await stockDemoKit(memory.kit)
  const assistant = createAssistant({
    commands,
    memory,
    newSeed: () => 1,
    onFault: fault => {
      throw fault
    },
  })
  try {
    return await work(assistant)
  } finally {
    await assistant.settled()
    await memory.close()
  }
}
