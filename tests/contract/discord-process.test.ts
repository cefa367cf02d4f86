// The program as a host runs it, on a fake Discord: starts, says it is ready, answers, stops when told.

import { type ChildProcess, spawn } from 'node:child_process'
import { once } from 'node:events'
import { mkdtempSync, rmSync } from 'node:fs'
import { createServer } from 'node:net'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { slash } from '../support/discord-events.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord.ts'

const patient = { timeout: 20_000, interval: 50 }

let discord: FakeDiscord
let folder: string
let program: ChildProcess | undefined
let errors = ''

beforeEach(async () => {
  discord = await startFakeDiscord()
  folder = mkdtempSync(join(tmpdir(), 'discord-process-'))
  errors = ''
})

afterEach(async () => {
  if (program?.exitCode === null && program.kill('SIGKILL')) await once(program, 'exit')
  await discord.close()
  rmSync(folder, { recursive: true })
})

async function freePort(): Promise<number> {
  const server = createServer().listen(0)
  await once(server, 'listening')
  const address = server.address()
  server.close()
  return typeof address === 'object' && address ? address.port : 0
}

function start(port: number, token: string): ChildProcess {
  const env = {
    PATH: process.env.PATH,
    CHARGEHAND_DATA: folder,
    CHARGEHAND_HTTP_PORT: String(port),
    DISCORD_TOKEN: token,
    DISCORD_API: discord.api,
  }
  program = spawn(process.execPath, ['src/main.ts'], { env, stdio: ['ignore', 'ignore', 'pipe'] })
  program.stderr?.on('data', chunk => {
    errors += chunk
  })
  return program
}

describe('the program', () => {
  it('gets ready, answers a real question, counts it and stops cleanly, and its log holds no token', async () => {
    const port = await freePort()
    const running = start(port, discord.token)
    const get = (path: string) => fetch(`http://127.0.0.1:${port}${path}`)
    await vi.waitFor(async () => expect((await get('/ready')).status).toBe(200), patient)

    const asked = discord.send(slash('current', { pack: '3S 720 LiHV', charger: '0.5/1/2/4A' }))
    await vi.waitFor(() => expect(asked.told).toHaveLength(1), patient)
    expect(asked.told[0]?.body.data.embeds[0].description).toContain('4.35 V a cell')
    expect(await (await get('/metrics')).text()).toContain('command="current",surface="discord"')

    running.kill('SIGTERM')
    expect(await once(running, 'exit')).toEqual([0, null])
    expect(errors).toContain('"ready"')
    expect(errors).not.toContain(discord.token)
    expect(errors).not.toContain(asked.token)
    expect(discord.refused).toEqual([])
  }, 60_000)

  it('ends with plain words, without the token, where Discord does not let it in', async () => {
    const running = start(await freePort(), 'a-wrong-token-of-a-stranger')
    const [code] = await once(running, 'exit')
    expect(code).toBe(1)
    expect(errors).toContain('Discord does not let us in')
    expect(errors).not.toContain('stranger')
  }, 60_000)
})
