// The program as it answers Discord by HTTP, and beside it the least that an endpoint can do: a process each.

import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { slash } from '../discord-events.ts'
import { freePort } from '../postgres.ts'
import { type Program, startProgram } from '../program.ts'
import { askedBy, publicHex, signedRequest } from './requests.ts'

export interface Endpoint {
  readonly port: number
  readonly program: Program
}

export interface Endpoints {
  readonly ours: Endpoint
  readonly least: Endpoint
  close(): Promise<void>
}

export async function startEndpoints(databaseUrl?: string): Promise<Endpoints> {
  const folder = await mkdtemp(join(tmpdir(), 'chargehand-load-'))
  const [ours, least] = [await startOurs(folder, databaseUrl), await startLeast()]
  return {
    ours,
    least,
    close: async () => {
      await Promise.all([ours, least].map(({ program }) => program.kill()))
      await rm(folder, { recursive: true })
    },
  }
}

export async function startOurs(folder: string, databaseUrl?: string): Promise<Endpoint> {
  const port = await freePort()
  const program = startProgram({
    CHARGEHAND_DATA: folder,
    CHARGEHAND_HTTP_PORT: String(port),
    DISCORD_INTERACTIONS: 'http',
    DISCORD_PUBLIC_KEY: publicHex,
    DATABASE_URL: databaseUrl ?? '',
  })
  return isReady({ port, program })
}

async function startLeast(): Promise<Endpoint> {
  const port = await freePort()
  const script = `tests/support/load/constant-endpoint.ts ${port} ${publicHex}`
  return isReady({ port, program: startProgram({}, script) })
}

async function isReady(endpoint: Endpoint): Promise<Endpoint> {
  const { program } = endpoint
  while (!program.errors().includes('"ready"')) {
    if (program.process.exitCode !== null) throw new Error(program.errors())
    await pause(20)
  }
  return endpoint
}

export const differentQuestions = 10_000

/** Numbers tell the questions apart: type, cells, capacity and charger. */
function valuesOf(number: number): Readonly<Record<string, string>> {
  const type = ['LiPo', 'LiHV', 'Li-ion', 'LiFe'][number % 4]
  const series = 1 + (Math.floor(number / 4) % 6)
  const capacity_mAh = 300 + 10 * Math.floor(number / 24)
  const charger = number % 3 === 0 ? '0.1-10A by 0.1 80W 1-6S' : '0.5/1/2/4A 80W 1-6S 9-20V'
  return { pack: `${series}S ${capacity_mAh} ${type}`, charger }
}

/** "What current", by somebody who is one of 100 of their club. */
export const asksCurrent = (question: number, member: number): Buffer =>
  signedRequest(askedBy(slash('current', valuesOf(question)), member))
