// An assistant that is asked by lines on standard input and delivers by lines on standard output; made to be killed.
// Each line is a question of somebody; what was asked before may come again, at once or out of order. At the end of its
// input it finishes what waits. Arguments: data folder, seconds by which the clock is ahead, database URL where there is one.

import { writeSync } from 'node:fs'
import { createInterface } from 'node:readline'
import { setTimeout as pause } from 'node:timers/promises'
import { commands } from '../../commands/index.ts'
import { createNoticeboards } from '../../src/assistant/cards/noticeboard.ts'
import type { Way } from '../../src/assistant/due/inbox.ts'
import type { Occasion } from '../../src/assistant/occasion.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import { openMemory } from '../../src/memory/opening/open.ts'

const [dataFolder = '', ahead_s = '0', databaseUrl] = process.argv.slice(2)
const memory = await openMemory({ dataFolder, databaseUrl })

const clock = () => new Date(Date.now() + Number(ahead_s) * 1000)

/** Unbuffered: a kill loses nothing that was said. */
const say = (line: object) => void writeSync(1, `${JSON.stringify(line)}\n`)
const deliver: Way['deliver'] = async ({ asked }, { fault, problem, headline }: Reply) => {
  if (fault !== undefined) say({ fault: headline })
  else say({ delivered: asked?.id, problem: problem?.what })
  return 'delivered'
}
const noticeboard = createNoticeboards()
const refuse = () => Promise.reject(new Error('nobody is here'))
noticeboard.add('room', {
  ready: () => true,
  post: refuse,
  edit: refuse,
  pin: refuse,
  strike: refuse,
  remove: refuse,
  direct: refuse,
})
const assistant = createAssistant({
  commands,
  memory,
  noticeboard,
  ways: new Map([['room', { ready: () => true, deliver }]]),
  clock,
  onFault: fault => say({ fault: String(fault) }),
})

async function hear(line: string): Promise<void> {
  const { id, person, question } = JSON.parse(line) as Record<string, string>
  const asker = { id: person ?? '', name: 'Somebody', moderates: false }
  const occasion: Occasion = {
    surface: 'room',
    asker,
    community: { id: 'room:club' },
    place: { id: 'room:bench', direct: false },
    asked: { id: id ?? '', at_ms: clock().getTime() - 60_000, way: {}, openFor_s: 1e6 },
  }
  await deliver(occasion, await assistant.answer(question ?? '', occasion))
  await assistant.delivered(occasion)
}

say({ ready: true })
await assistant.strike('question')
const heard: Promise<void>[] = []
for await (const line of createInterface({ input: process.stdin })) {
  heard.push(hear(line))
  await pause(0)
}
await Promise.all(heard)
await assistant.strike('question')
await assistant.settled()
await memory.close()
