// What both ways of asking from the command line share: the clubhouse of the configuration, and what goes wrong with it.

import type { Reply } from '../assistant/reply.ts'
import { type Config, readConfig } from '../program/config.ts'
import { endingOf } from '../program/ending.ts'
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

/** Runs `visit` in the clubhouse; where the configuration or the memory cannot be used, standard error says so. */
export async function inClubhouse(visit: (clubhouse: Clubhouse, config: Config) => Promise<number>): Promise<number> {
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
    return endingOf(error)
  }
}
