// A gateway's client on its own, so that nothing but what it keeps of servers fills its memory. Arguments: Discord's address, its
// token. Says on standard output, as JSON, what it has and holds once it is ready.

import { setTimeout as pause } from 'node:timers/promises'
import { createDiscordGateway } from '../../../src/discord/gateway.ts'
import { createLog } from '../../../src/program/log.ts'
import { askingOf } from '../ask.ts'

const [api = '', token = '', shards = 'auto'] = process.argv.slice(2)
const { assistant, memory } = await askingOf([])
const gateway = createDiscordGateway({
  assistant,
  answered: memory.answered,
  house: memory.house,
  questions: memory.questions,
  draw: async () => Buffer.alloc(0),
  log: createLog('warn'),
  api,
  token,
  shards: shards === 'auto' ? 'auto' : Number(shards),
  onClosed: error => {
    process.stderr.write(`${error.message}\n`)
    process.exit(77)
  },
})
const held_B = () => {
  globalThis.gc?.()
  return process.memoryUsage().heapUsed + process.memoryUsage().external
}
const before_B = held_B()
const since = performance.now()
await gateway.start()
const ready_s = (performance.now() - since) / 1000
await pause(1000)
process.stdout.write(`${JSON.stringify({ held_B: held_B() - before_B, rss_B: process.memoryUsage().rss, ready_s })}\n`)
process.on('SIGTERM', () => process.exit(0))
