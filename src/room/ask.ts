// One question from the command line: exit 0 answered, 2 a problem with the question, 1 a fault of ours.

import { parseArgs } from 'node:util'
import { createClubhouse } from './clubhouse.ts'
import { renderJson } from './render-json.ts'
import { renderText } from './render-text.ts'

const usage = 'usage: npm run -s ask -- [--json] "<question>"'

async function main(): Promise<0 | 1 | 2> {
  const { values, positionals } = parseArgs({ options: { json: { type: 'boolean' } }, allowPositionals: true })
  const { assistant, occasion, close } = await createClubhouse()
  const reply = await assistant.answer(positionals.join(' '), occasion)
  await close()
  const width = Math.min(process.stdout.columns ?? 100, 100)
  const colour = process.stdout.hasColors?.() ?? false
  process.stdout.write(`${values.json ? renderJson(reply) : renderText(reply, { width, colour })}\n`)
  if (reply.fault !== undefined) return 1
  return reply.problem ? 2 : 0
}

try {
  process.exitCode = await main()
} catch (error) {
  process.stderr.write(`${error instanceof Error ? error.message : error}\n${usage}\n`)
  process.exitCode = 1
}
