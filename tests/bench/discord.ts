// How much the assistant adds to what Discord and its library cost anyway: beside the smallest handler there is.

import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { commands } from '../../commands/index.ts'
import { createAssistant } from '../../src/assistant/running/assistant.ts'
import type { Chart } from '../../src/charts/chart.ts'
import { drawPng } from '../../src/charts/drawing/draw.ts'
import { createDiscordGateway } from '../../src/discord/gateway.ts'
import { openMemory } from '../../src/memory/opening/open.ts'
import { createLog } from '../../src/program/log.ts'
import { type Interaction, slash, typing } from '../support/discord-events.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord.ts'
import { smallestClient } from '../support/smallest-discord.ts'
import type { Row } from './benches.ts'
import { percentile } from './timing.ts'

const interactions = 1000
const question = () => slash('current', { pack: '3S 720 LiHV', charger: '0.5/1/2/4A 80W 1-4S 9-20V' })
const constant = { type: 4, data: { content: '0.5 A' } }

export default async function discord(): Promise<Row[]> {
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  const memory = await openMemory({ dataFolder: folder })
  const log = createLog('silent')
  const assistant = createAssistant({ commands, memory, onFault: fault => console.error(fault) })
  const onClosed = (error: Error) => console.error(error)
  const parts = {
    assistant,
    questions: memory.questions,
    answered: memory.answered,
    house: memory.house,
    draw: (chart: Chart) => drawPng(chart),
    log,
    onClosed,
  }
  try {
    return await byGateway(parts)
  } finally {
    await memory.close()
    rmSync(folder, { recursive: true })
  }
}

type Parts = Omit<Parameters<typeof createDiscordGateway>[0], 'api' | 'token'>

async function byGateway(parts: Parts): Promise<Row[]> {
  const own = async ({ api, token }: FakeDiscord) => createDiscordGateway({ ...parts, api, token })
  const smallest = async ({ api, token }: FakeDiscord) => smallestClient(api, token, constant.data.content)
  const answers_ms = await onFakeDiscord(own, question)
  const suggestions_ms = await onFakeDiscord(own, () => typing('current', 'pack', '3S'))
  const least_ms = await onFakeDiscord(smallest, question)
  return [
    ...[50, 99].map(percent => row('slash command in to callback out', answers_ms, least_ms, percent)),
    row('typing in to suggestions out', suggestions_ms, least_ms, 99),
  ]
}

function row(what: string, own_ms: number[], least_ms: number[], percent: number): Row {
  const [own, least] = [percentile(own_ms, percent), percentile(least_ms, percent)]
  return {
    name: `${what}, ${percent === 50 ? 'median' : 'p99'} of 1,000`,
    value: `${own.toFixed(2)} ms`,
    ratio: `${(own / least).toFixed(1)} times the smallest handler, ${least.toFixed(2)} ms`,
  }
}

interface Client {
  start(): Promise<void>
  stop(): Promise<void>
}

/** Milliseconds from an event sent to its callback's arrival, one by one. */
async function onFakeDiscord(
  clientOn: (discord: FakeDiscord) => Promise<Client>,
  event: () => Interaction,
): Promise<number[]> {
  const discord = await startFakeDiscord({ judging: false })
  const client = await clientOn(discord)
  await client.start()
  const times: number[] = []
  for (let round = -100; round < interactions; round++) {
    const asked = discord.send(event())
    const { at } = await asked.acknowledgement
    if (round >= 0) times.push(at - asked.sentAt)
  }
  await client.stop()
  await discord.close()
  if (discord.refused.length > 0) throw new Error(discord.refused[0])
  return times
}
