// The script that registers the commands, as a host runs it.

import { execFile } from 'node:child_process'
import { promisify } from 'node:util'
import { afterEach, beforeEach, describe, expect, it } from 'vitest'
import { commands } from '../../../commands/index.ts'
import { allCommands } from '../../../src/discord/commands/slash.ts'
import { english } from '../../../src/ground/locale.ts'
import { type DiscordRoom, openDiscordRoom } from '../../support/discord-room.ts'

const run = promisify(execFile)

let room: DiscordRoom
beforeEach(async () => {
  room = await openDiscordRoom()
})
afterEach(async () => {
  await room.close()
  expect(room.discord.refused).toEqual([])
})

const names = (scope: string) => room.discord.commands.get(scope)?.map(({ name }) => name)

describe('registering', () => {
  it('by the script registers the real commands and gives the link with the least permissions', async () => {
    const environment = { PATH: process.env.PATH, DISCORD_TOKEN: room.discord.token, DISCORD_API: room.discord.api }
    const { stdout } = await run(process.execPath, ['src/discord/register.ts'], { env: environment })
    expect(names('global')).toEqual(allCommands(commands, english('.')).map(({ name }) => name))
    const again = await run(process.execPath, ['src/discord/register.ts'], { env: environment })
    expect(again.stdout).toMatch(/^All \d+ commands are registered everywhere as they are\./)
    expect(room.discord.requests.filter(request => request.startsWith('PUT'))).toHaveLength(1)
    const link = new URL(/Invite: (\S+)/.exec(stdout)?.[1] ?? '')
    // View Channel, Send Messages, Send Messages in Threads, Embed Links, Attach Files, Read Message History:
    // https://docs.discord.com/developers/topics/permissions
    const pinMessages = 1n << 51n
    const least = (1n << 10n) | (1n << 11n) | (1n << 38n) | (1n << 14n) | (1n << 15n) | (1n << 16n) | pinMessages
    expect(BigInt(link.searchParams.get('permissions') ?? 0)).toBe(least)
    expect(link.searchParams.get('scope')).toBe('bot applications.commands')
  })

  it('by the script with a wrong token says so, without the token', async () => {
    const environment = {
      PATH: process.env.PATH,
      DISCORD_TOKEN: 'wrong-token-of-nobody',
      DISCORD_API: room.discord.api,
    }
    const failed = await run(process.execPath, ['src/discord/register.ts'], { env: environment }).catch(error => error)
    expect(failed.code).toBe(1)
    expect(failed.stderr).toMatch(/^Nothing more was registered; .* 401/)
    expect(failed.stderr).not.toContain('nobody')
  })
})
