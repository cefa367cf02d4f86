// One visit to the room from the terminal that the program was started in.

import type { Config } from '../program/config.ts'
import type { Log } from '../program/log.ts'
import { endOnBrokenPipe } from './broken-pipe.ts'
import { openClubhouse } from './clubhouse.ts'
import { openRoom } from './room.ts'

export async function visitRoom(config: Config, log: Log): Promise<void> {
  endOnBrokenPipe(process.stdout)
  const clubhouse = await openClubhouse(config, log)
  await openRoom({ ...clubhouse, input: process.stdin, output: process.stdout })
  await clubhouse.close()
}
