// Answers one question on standard output.

import { ConfigError, readConfig } from '../config.ts'
import { createLog } from '../log.ts'
import { MemoryError } from '../memory/memory-error.ts'
import { endOnBrokenPipe } from './broken-pipe.ts'
import { openClubhouse } from './clubhouse.ts'
import { renderJson } from './render-json.ts'
import { renderText } from './render-text.ts'

/** The exit code: 0 answered, 2 a problem with the question, 1 a fault of ours. */
export async function askOnce(question: string, json: boolean): Promise<0 | 1 | 2> {
  endOnBrokenPipe(process.stdout)
  try {
    const config = readConfig()
    const { assistant, occasion, close } = await openClubhouse(config, createLog(config.CHARGEHAND_LOG_LEVEL))
    const reply = await assistant.answer(question, occasion)
    await close()
    const width = Math.min(process.stdout.columns ?? 100, 100)
    const colour = process.stdout.hasColors?.() ?? false
    process.stdout.write(`${json ? renderJson(reply) : renderText(reply, { width, colour })}\n`)
    if (reply.fault !== undefined) return 1
    return reply.problem ? 2 : 0
  } catch (error) {
    if (!(error instanceof ConfigError || error instanceof MemoryError)) throw error
    process.stderr.write(`${error.message}\n`)
    return 1
  }
}
