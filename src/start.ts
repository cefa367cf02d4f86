// Puts the parts together: the chats that are configured or, without any, the room in this terminal.

import { namedIn } from './platforms.ts'
import { readConfig } from './program/config.ts'
import { endingOf } from './program/ending.ts'
import { createLog } from './program/log.ts'

/** What cannot be used is said in plain words, with an exit code of its kind. */
export async function start(): Promise<void> {
  try {
    const config = readConfig()
    const log = createLog(config.CHARGEHAND_LOG_LEVEL)
    if (namedIn(config).length > 0) await (await import('./serve.ts')).serve(config, log)
    else await (await import('./room/visit.ts')).visitRoom(config, log)
  } catch (error) {
    process.exit(endingOf(error))
  }
}
