// One question from the command line: exit 0 answered, 2 a problem with the question, 1 a fault of ours.

import { readConfig } from '../config.ts'
import { createLog } from '../log.ts'
import { endOnBrokenPipe } from './broken-pipe.ts'
import { openClubhouse } from './clubhouse.ts'
import { renderJson } from './render-json.ts'
import { renderText } from './render-text.ts'

async function ask(question: string, json: boolean): Promise<0 | 1 | 2> {
  const config = readConfig()
  const { assistant, occasion, close } = await openClubhouse(config, createLog(config.CHARGEHAND_LOG_LEVEL))
  const reply = await assistant.answer(question, occasion)
  await close()
  const width = Math.min(process.stdout.columns ?? 100, 100)
  const colour = process.stdout.hasColors?.() ?? false
  process.stdout.write(`${json ? renderJson(reply) : renderText(reply, { width, colour })}\n`)
  if (reply.fault !== undefined) return 1
  return reply.problem ? 2 : 0
}

endOnBrokenPipe(process.stdout)
const words = process.argv.slice(2)
const json = words[0] === '--json'
try {
  // Only a leading --json is ours: whatever else starts with a dash belongs to the question.
  process.exitCode = await ask((json ? words.slice(1) : words).join(' '), json)
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n`)
  process.exitCode = 1
}
