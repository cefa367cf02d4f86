// Tests that ask an assistant with the demo club's kit, and end with no fault of the program itself.

import { expect } from 'vitest'
import type { Entry } from '../../src/assistant/command.ts'
import { stockDemoKit } from '../../src/room/demo-club.ts'
import { type Asking, type AskingParts, askingOf } from './ask.ts'

export async function demoAsking(commands: readonly Entry[], parts: AskingParts = {}): Promise<Asking> {
  const asking = await askingOf(commands, parts)
  await stockDemoKit(asking.memory.kit)
  return asking
}

export async function endFaultless({ faults, memory }: Asking): Promise<void> {
  expect(faults).toEqual([])
  await memory.close()
}
