// What both ways of asking from the command line share: the clubhouse of the configuration, and what goes wrong with it.

import { MemoryError } from '../memory/memory-error.ts'
import { type Config, ConfigError, readConfig } from '../program/config.ts'
import { createLog } from '../program/log.ts'
import { endOnBrokenPipe } from './broken-pipe.ts'
import { type Clubhouse, openClubhouse } from './clubhouse.ts'

export interface AskedHow {
  readonly json: boolean
  readonly moderates: boolean
}

/** Runs `visit` in the clubhouse; 1 where the configuration or the memory cannot be used, said on standard error. */
export async function inClubhouse<T extends number>(
  visit: (clubhouse: Clubhouse, config: Config) => Promise<T>,
): Promise<T | 1> {
  endOnBrokenPipe(process.stdout)
  try {
    const config = readConfig()
    const clubhouse = await openClubhouse(config, createLog(config.CHARGEHAND_LOG_LEVEL))
    try {
      return await visit(clubhouse, config)
    } finally {
      await clubhouse.close()
    }
  } catch (error) {
    if (!(error instanceof ConfigError || error instanceof MemoryError)) throw error
    process.stderr.write(`${error.message}\n`)
    return 1
  }
}
