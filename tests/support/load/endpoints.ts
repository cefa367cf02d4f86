// The program as it answers Discord by HTTP, and beside it the least that an endpoint can do: a process each.

import { mkdtemp, rm } from 'node:fs/promises'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { setTimeout as pause } from 'node:timers/promises'
import { slash } from '../discord-events.ts'
import { publicHex } from '../discord-signature.ts'
import { freePort } from '../postgres.ts'
import { type Program, startProgram } from '../program.ts'
import { askedBy, signedRequest } from './requests.ts'

export interface Endpoint {
  readonly port: number
  readonly program: Program
}

export interface Endpoints {
  readonly ours: Endpoint
  readonly least: Endpoint
  close(): Promise<void>
}

export async function startEndpoints(databaseUrl = ''): Promise<Endpoints> {
  const folder = await mkdtemp(join(tmpdir(), 'chargehand-load-'))
  const [ours, least] = [await startOurs({ CHARGEHAND_DATA: folder, DATABASE_URL: databaseUrl }), await startLeast()]
  return {
    ours,
    least,
    close: async () => {
      await Promise.all([ours, least].map(({ program }) => program.kill()))
      await rm(folder, { recursive: true })
    },
  }
}

/** With a clock that goes wrong by some seconds, where it is told so. */
export async function startOurs(env: Readonly<Record<string, string>>, aheadBy_s = 0): Promise<Endpoint> {
  const port = await freePort()
  const clock = aheadBy_s === 0 ? '' : `--import=./tests/support/load/wrong-clock.ts `
  const program = startProgram(
    {
      CHARGEHAND_HTTP_PORT: String(port),
      DISCORD_INTERACTIONS: 'http',
      DISCORD_PUBLIC_KEY: publicHex,
      DISCORD_API: 'http://127.0.0.1:1/api',
      CLOCK_AHEAD_S: String(aheadBy_s),
      ...env,
    },
    `${clock}src/main.ts`,
  )
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
export function valuesOf(number: number) {
  const type = ['LiPo', 'LiHV', 'Li-ion', 'LiFe'][number % 4]
  const series = 1 + (Math.floor(number / 4) % 6)
  const capacity_mAh = 600 + 10 * Math.floor(number / 24)
  // None is refused: that would be cheap.
  const charger = number % 4 < 2 ? '0.5/1/2/4A 80W 1-6S 9-20V' : '0.1-10A by 0.1 80W 1-6S'
  return { pack: `${series}S ${capacity_mAh} ${type}`, charger }
}

/** "What current", by somebody who is one of 100 of their club. */
export const asksCurrent = (question: number, member: number): Buffer =>
  signedRequest(askedBy(slash('current', valuesOf(question)), member))
