// The parts that the room and a single question need: the assistant, and the demo club with its kit.

import { join } from 'node:path'
import type { Config } from '../program/config.ts'
import type { Log } from '../program/log.ts'
import { openAssistant } from '../program/open-assistant.ts'
import { stockDemoKit } from './demo-club.ts'
import { roomOccasion } from './occasion.ts'

/** Always on SQLite in the data folder: a demo club has no business in a database that others share. */
export async function openClubhouse({ CHARGEHAND_DATA: dataFolder }: Config, log: Log) {
  const { assistant, memory, noticeboard, rounds } = await openAssistant({ dataFolder }, log)
  await stockDemoKit(memory.kit)
  return {
    assistant,
    occasion: roomOccasion(),
    noticeboard,
    /** Not started. */
    rounds,
    /** For the room's own files. */
    folder: join(dataFolder, 'room'),
    close: async () => {
      await rounds.stop()
      await memory.close()
    },
  }
}

export type Clubhouse = Awaited<ReturnType<typeof openClubhouse>>
