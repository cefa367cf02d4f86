// The parts that the room and a single question need: the assistant, and the demo club with its kit.

import { join } from 'node:path'
import type { Noticeboards } from '../assistant/cards/noticeboard.ts'
import type { Occasion } from '../assistant/occasion.ts'
import type { Assistant } from '../assistant/running/assistant.ts'
import type { Rounds } from '../assistant/running/rounds.ts'
import type { Config } from '../program/config.ts'
import type { Log } from '../program/log.ts'
import { openAssistant } from '../program/open-assistant.ts'
import { stockDemoKit } from './demo-club.ts'
import { roomOccasion } from './occasion.ts'

export interface Clubhouse {
  readonly assistant: Assistant
  readonly occasion: Occasion
  readonly noticeboard: Noticeboards
  /** Not started. */
  readonly rounds: Rounds
  /** For the room's own files. */
  readonly folder: string
  close(): Promise<void>
}

/** Always on SQLite in the data folder: a demo club has no business in a database that others share. */
export async function openClubhouse({ CHARGEHAND_DATA: dataFolder }: Config, log: Log): Promise<Clubhouse> {
  const { assistant, memory, noticeboard, rounds } = await openAssistant({ dataFolder }, log)
  await stockDemoKit(memory.kit)
  return {
    assistant,
    occasion: roomOccasion(),
    noticeboard,
    rounds,
    folder: join(dataFolder, 'room'),
    close: async () => {
      await rounds.stop()
      await memory.close()
    },
  }
}
