// The parts that the room and a single question need: the assistant, and the demo club with its kit.

import { join } from 'node:path'
import type { Assistant } from '../assistant/assistant.ts'
import type { Occasion } from '../assistant/context.ts'
import type { Config } from '../config.ts'
import type { Log } from '../log.ts'
import { openAssistant } from '../open-assistant.ts'
import { stockDemoKit } from './demo-club.ts'
import { roomOccasion } from './occasion.ts'

export interface Clubhouse {
  readonly assistant: Assistant
  readonly occasion: Occasion
  /** For the room's own files. */
  readonly folder: string
  close(): Promise<void>
}

/** Always on SQLite in the data folder: a demo club has no business in a database that others share. */
export async function openClubhouse({ CHARGEHAND_DATA: dataFolder }: Config, log: Log): Promise<Clubhouse> {
  const { assistant, memory } = await openAssistant({ dataFolder }, log)
  await stockDemoKit(memory.kit)
  return {
    assistant,
    occasion: roomOccasion(),
    folder: join(dataFolder, 'room'),
    close: async () => {
      await assistant.settled()
      await memory.close()
    },
  }
}
