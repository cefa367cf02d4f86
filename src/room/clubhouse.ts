// The parts that the room and a single question need: the assistant, and the demo club with its kit.

import { join } from 'node:path'
import { commands } from '../../commands/index.ts'
import { type Assistant, createAssistant } from '../assistant/assistant.ts'
import type { Occasion } from '../assistant/context.ts'
import { readConfig } from '../config.ts'
import { createLog, describeError } from '../log.ts'
import { openMemory } from '../memory/open.ts'
import { stockDemoKit } from './demo-club.ts'
import { roomOccasion } from './occasion.ts'

export interface Clubhouse {
  readonly assistant: Assistant
  readonly occasion: Occasion
  readonly historyFile: string
  close(): Promise<void>
}

/** Opens the data folder that the configuration names. Throws a ConfigError where it cannot be used. */
export async function openClubhouse(): Promise<Clubhouse> {
  const config = readConfig()
  const log = createLog(config.CHARGEHAND_LOG_LEVEL)
  const memory = await openMemory({ dataFolder: config.CHARGEHAND_DATA })
  await stockDemoKit(memory.kit)
  const assistant = createAssistant({
    commands,
    memory,
    clock: () => new Date(),
    onFault: (fault, reference) => log.error({ reference, fault: describeError(fault) }, 'a question failed'),
  })
  return {
    assistant,
    occasion: roomOccasion(),
    historyFile: join(config.CHARGEHAND_DATA, 'room-history'),
    close: () => memory.close(),
  }
}
