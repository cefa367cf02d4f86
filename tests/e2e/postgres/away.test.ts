// The program on a fake Discord, its PostgreSQL stopped, slow or read-only: charging questions go on, saving says that it
// did not, and all comes back by itself.

import { once } from 'node:events'
import { createServer, connect as dial, type Server, type Socket } from 'node:net'
import { setTimeout as pause } from 'node:timers/promises'
import { Client } from 'pg'
import { afterAll, afterEach, beforeAll, beforeEach, expect, test, vi } from 'vitest'
import { type Interaction, moderatorPermissions, press, slash } from '../../support/discord-events.ts'
import { type FakeDiscord, startFakeDiscord } from '../../support/fake-discord.ts'
import { findPostgres, freePort, type PostgresServer, startPostgres } from '../../support/postgres.ts'
import { type Program, startProgram } from '../../support/program.ts'

/** Whoever asks on Discord sees nothing at all where the first sign takes longer. */
const discordsPatience_ms = 3000
const patient = { timeout: 30_000, interval: 100 }

let postgres: PostgresServer
let line: Server
let delay_ms = 0
let discord: FakeDiscord
let program: Program

/** A line to the server that can be made slow. */
async function slowLine(to: URL): Promise<Server> {
  const carry = (from: Socket, into: Socket) => {
    let before = Promise.resolve()
    from.on('data', chunk => {
      const wait = delay_ms
      before = before.then(() => (wait > 0 ? pause(wait) : undefined)).then(() => void into.write(chunk))
    })
    from.on('close', () => into.destroy())
    from.on('error', () => into.destroy())
  }
  const server = createServer(socket => {
    const far = dial(Number(to.port), to.hostname)
    carry(socket, far)
    carry(far, socket)
  }).listen(await freePort(), '127.0.0.1')
  await once(server, 'listening')
  return server
}

const endOthers =
  "select pg_terminate_backend(pid) from pg_stat_activity where pid <> pg_backend_pid() and usename = 'tester'"

async function sql(...statements: readonly string[]) {
  const client = new Client({ connectionString: postgres.url })
  client.on('error', () => {})
  await client.connect()
  for (const statement of statements) await client.query(statement)
  await client.end()
}

beforeAll(async () => {
  postgres = await startPostgres(findPostgres() ?? '')
  line = await slowLine(new URL(postgres.url))
})
afterAll(async () => {
  line.close()
  await postgres.close()
})

beforeEach(async () => {
  delay_ms = 0
  discord = await startFakeDiscord()
  const url = new URL(postgres.url)
  url.port = String((line.address() as { port: number }).port)
  program = startProgram({
    CHARGEHAND_DATA: '/nowhere',
    DATABASE_URL: url.href,
    DISCORD_TOKEN: discord.token,
    DISCORD_API: discord.api,
  })
  await vi.waitFor(() => expect(program.errors()).toContain('"ready"'), patient)
  await heard('house set', { chemistry: 'LiPo', rate: '0.5C' })
})
afterEach(async () => {
  await program.kill()
  await discord.close()
})

/** What it said in the end, and how long the first sign of it took. */
const heard = (command: string, options: Readonly<Record<string, string>>) =>
  answered(slash(command, options, { permissions: moderatorPermissions }))

async function answered(interaction: Interaction) {
  const since = performance.now()
  const asked = discord.send(interaction)
  await vi.waitFor(() => expect(asked.told.length).toBeGreaterThan(0), { timeout: 15_000, interval: 10 })
  const first_ms = performance.now() - since
  const text = () => JSON.stringify(asked.told.map(({ body }) => body))
  await vi.waitFor(() => expect(text()).toContain('description'), { timeout: 15_000, interval: 10 })
  return { text: text(), first_ms }
}

const charging = () => heard('current', { pack: '3S 1000 LiPo', charger: '0.1-5A by 0.1 80W 1-6S 9-20V' })
const saving = () => heard('kit save', { name: 'wren', pack: '3S 720 LiPo' })
const backAgain = () => vi.waitFor(async () => expect((await charging()).text).not.toContain('unconfirmed'), patient)

test('stopped, it goes on by the limit that it knew last, and comes back', { timeout: 120_000 }, async () => {
  const before = (await charging()).text
  expect(before).toContain('0.5\u00a0A')
  await postgres.stop()
  const [, button = ''] = /"custom_id":"(v2:why:[^"]+)"/.exec(before) ?? []
  expect((await answered(press(button))).text).toContain('could not be looked up')
  const { text, first_ms } = await charging()
  expect(text).toContain('0.5\u00a0A')
  expect(text).toContain('could not be looked up')
  expect(first_ms).toBeLessThan(discordsPatience_ms)
  expect((await saving()).text).toContain('Not saved')
  await postgres.start()
  await backAgain()
  expect((await saving()).text).not.toContain('Not saved')
  expect(program.process.exitCode).toBeNull()
})

test('five seconds slow, it answers in time and saves nothing in silence', { timeout: 120_000 }, async () => {
  delay_ms = 5000
  const { text, first_ms } = await charging()
  expect(text).toContain('0.5\u00a0A')
  expect(text).toContain('unconfirmed')
  expect(first_ms).toBeLessThan(discordsPatience_ms)
  expect((await saving()).text).toContain('Not saved')
  delay_ms = 0
  await backAgain()
})

test('read-only, it looks things up and says that it did not save', { timeout: 120_000 }, async () => {
  await sql('alter role tester set default_transaction_read_only = on', endOthers)
  try {
    await backAgain()
    expect((await charging()).text).toContain('0.5\u00a0A')
    expect((await saving()).text).toContain('Not saved')
  } finally {
    await sql('set default_transaction_read_only = off', 'alter role tester reset default_transaction_read_only')
  }
})
