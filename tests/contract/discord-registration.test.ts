// Registering commands: what Discord has afterwards, and that a start only compares.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import type { Entry } from '../../src/assistant/command.ts'
import { registerCommands } from '../../src/discord/commands/registration.ts'
import { bench, trayAdd, trayList } from '../support/discord-commands.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'
import { serverIds } from '../support/discord-servers.ts'

const server = '700000000000000003'

let room: DiscordRoom
beforeEach(async () => {
  room = await openDiscordRoom()
})
afterEach(async () => {
  await room.close()
  expect(room.discord.refused).toEqual([])
})

const always = ['ask', 'Ask the chargehand']
const names = (scope: string) => room.discord.commands.get(scope)?.map(({ name }) => name)

describe('registering', () => {
  it('everywhere empties the servers, and the other way round', async () => {
    const everywhere = await registerCommands(room.discord, [bench, trayAdd, trayList], undefined)
    expect([names('global'), everywhere.emptied]).toEqual([['bench', 'tray', ...always], []])

    const inServer = await registerCommands(room.discord, [bench], server)
    expect([names('global'), names(server), inServer.emptied]).toEqual([[], ['bench', ...always], ['everywhere']])

    const again = await registerCommands(room.discord, [bench], undefined)
    expect([names('global'), names(server), again.emptied]).toEqual([['bench', ...always], [], [`server ${server}`]])
  })
})

describe('registering with more servers than Discord gives at once', () => {
  it('looks at each of them once, also where it is broken off and waits for a limit', { timeout: 60_000 }, async () => {
    await room.close()
    room = await openDiscordRoom({ servers: 230 })
    const { discord } = room
    const looked = () => discord.requests.filter(request => /^GET .*guilds\/\d+\/commands$/.test(request))
    const all = serverIds(230).toSorted((a, b) => (BigInt(a) < BigInt(b) ? -1 : 1))
    discord.commands.set(all[220] ?? '', [{ name: 'old' }])
    let last: string | undefined
    const progress = {
      last: () => last,
      reached: (server: string) => {
        last = server
      },
    }
    discord.mishap(new RegExp(`${all[5]}/commands`), { status: 429, retryAfter_s: 0.2 })
    // Discord tries three times more.
    for (let count = 0; count < 4; count++) discord.mishap(new RegExp(`${all[100]}/commands`), { status: 500 })
    await expect(registerCommands(discord, [bench], undefined, progress)).rejects.toThrow()
    expect(last).toBe(all[99])
    const { emptied } = await registerCommands(discord, [bench], undefined, progress)
    expect(emptied).toEqual([`server ${all[220]}`])
    expect([looked().length, new Set(looked()).size]).toEqual([230 + 1 + 4, 230])
  })
})

describe('a start', () => {
  it('is silent where Discord has these commands', async () => {
    await registerCommands(room.discord, room.assistant.registry.commands, undefined)
    const surface = room.surface()
    await surface.start()
    await surface.stop()
    expect(room.discord.requests).toContain('GET /applications/700000000000000002/commands')
    expect(room.logged()).not.toContain('discord:register')
  })

  it('names the commands that differ', async () => {
    const { words } = bench
    const other: Entry = { ...bench, words: locale => ({ ...words(locale), summary: locale.own('Something else') }) }
    await registerCommands(room.discord, [other, trayAdd], undefined)
    await room.surface().start()
    await vi.waitFor(() => expect(room.logged()).toContain('"commands":["bench","tray"]'))
  })
})
