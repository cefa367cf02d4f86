// A bot in servers on several shards: all of them are heard, and each connection comes back by itself.

import { afterEach, expect, it, vi } from 'vitest'
import { createDiscordGateway } from '../../src/discord/gateway.ts'
import { slash } from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'
import { serverIds } from '../support/discord-servers.ts'

const patient = { timeout: 20_000, interval: 20 }
const servers = 6

let room: DiscordRoom | undefined
let gateway: ReturnType<typeof createDiscordGateway> | undefined
afterEach(async () => {
  await gateway?.stop()
  await room?.close()
  expect(room?.discord.refused).toEqual([])
})

async function opened(rules: Parameters<typeof openDiscordRoom>[0] = {}) {
  room = await openDiscordRoom({ servers, ...rules })
  const { discord, parts } = room
  gateway = createDiscordGateway({ ...parts(), token: discord.token, shards: 2 })
  await gateway.start()
  await vi.waitFor(() => expect(gateway?.ready()).toBe(true), patient)
  const askEverywhere = () => serverIds(servers).map(guild_id => discord.send({ ...slash('bench'), guild_id }))
  return { discord, askEverywhere }
}

it('answers in the servers of all shards, also after every connection broke', { timeout: 60_000 }, async () => {
  const { discord, askEverywhere } = await opened()
  expect(discord.gateway.sessions.identified).toBe(2)
  await Promise.all(askEverywhere().map(({ acknowledgement }) => acknowledgement))
  discord.gateway.cut()
  const meanwhile = askEverywhere()
  await Promise.all(meanwhile.map(({ acknowledgement }) => acknowledgement))
  expect(discord.gateway.sessions).toEqual({ identified: 2, resumed: 2 })
})

it('notices connections that only seem to live', { timeout: 60_000 }, async () => {
  const { discord, askEverywhere } = await opened({ heartbeat_ms: 300 })
  discord.gateway.fallSilent()
  await vi.waitFor(() => expect(discord.gateway.sessions.resumed).toBe(2), patient)
  await Promise.all(askEverywhere().map(({ acknowledgement }) => acknowledgement))
  expect(discord.gateway.sessions.identified).toBe(2)
})
