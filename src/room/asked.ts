// What both ways of asking from the command line share: the clubhouse of the configuration, and what goes wrong with it.

import type { Reply } from '../assistant/reply.ts'
import { MemoryError } from '../memory/memory-error.ts'
import { type Config, ConfigError, readConfig } from '../program/config.ts'
import { createLog } from '../program/log.ts'
import { endOnBrokenPipe } from './broken-pipe.ts'
import { type Clubhouse, openClubhouse } from './clubhouse.ts'
import { renderFull, renderText, type TextRules } from './render-text.ts'
import { fullHint } from './room.words.ts'

export interface AskedHow {
  readonly json: boolean
  /** All of a reply, not only what a phone shows at once. */
  readonly full: boolean
  readonly moderates: boolean
}

/** As it was asked for. */
export const renderAsked = (reply: Reply, { full }: AskedHow, rules: TextRules): string =>
  full ? renderFull(reply, rules) : renderText(reply, rules, [fullHint(reply.locale)])

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
