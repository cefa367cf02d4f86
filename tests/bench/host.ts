// The memory of a small club's host: the whole program on Discord alone, with its threads, as Linux counts it.

import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout } from 'node:timers/promises'
import { slash } from '../support/discord-events.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord.ts'
import { freePort } from '../support/postgres.ts'
import { type Program, startProgram } from '../support/program.ts'
import type { Row } from './benches.ts'

const pictured = (capacity_mAh: number) => `how long for 3S ${capacity_mAh}mAh LiHV at 1A from 3.7V`
const questions = ['can i charge a swollen pack', ...Array.from({ length: 15 }, (_, at) => pictured(700 + at))]

export default async function host(): Promise<Row[]> {
  const discord = await startFakeDiscord({ judging: false })
  const folder = mkdtempSync(join(tmpdir(), 'bench-'))
  try {
    // The first time all is compiled.
    await busy(discord, folder)
    return await busy(discord, folder)
  } finally {
    await discord.close()
    rmSync(folder, { recursive: true })
  }
}

async function busy(discord: FakeDiscord, folder: string): Promise<Row[]> {
  const program = await ready(discord, folder)
  const atFirst = resident(program, 'when ready')
  for (const question of questions) {
    const asked = discord.send(slash('ask', { question }))
    while (asked.told.length === 0) await setTimeout(20)
  }
  await setTimeout(1000)
  const afterwards = resident(program, `after ${questions.length} questions, 15 with a picture`)
  program.process.kill('SIGTERM')
  await program.ended()
  return [atFirst, afterwards]
}

async function ready({ token, api }: FakeDiscord, folder: string): Promise<Program> {
  const program = startProgram({
    CHARGEHAND_DATA: join(folder, 'data'),
    CHARGEHAND_HTTP_PORT: String(await freePort()),
    NODE_COMPILE_CACHE: join(folder, 'compiled'),
    DISCORD_TOKEN: token,
    DISCORD_API: api,
  })
  while (!program.errors().includes('"ready"')) await setTimeout(50)
  return program
}

function resident({ process: { pid } }: Program, when: string): Row {
  const [, kB] = /VmRSS:\s+(\d+)/.exec(readFileSync(`/proc/${pid}/status`, 'utf8')) ?? []
  return { name: `resident ${when}`, value: `${Math.round(Number(kB) / 1024)} MB` }
}
