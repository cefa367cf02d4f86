// An assistant with the demo club's kit, and people to ask it.

import type { Entry } from '../../src/assistant/command.ts'
import { stockDemoKit } from '../../src/room/demo-club.ts'
import { type Asking, type AskingParts, askingOf } from './ask.ts'

export async function demoAsking(commands: readonly Entry[], parts: AskingParts = {}): Promise<Asking> {
  const asking = await askingOf(commands, parts)
  await stockDemoKit(asking.memory.kit)
  return asking
}
