// The fake channels themselves: what Discord refuses a bot there they refuse.

import { afterEach, beforeEach, expect, test } from 'vitest'
import { bareChannelId, channelId } from '../support/discord-events.ts'
import { mayBot } from '../support/discord-permissions.ts'
import { type FakeDiscord, startFakeDiscord } from '../support/fake-discord.ts'

let discord: FakeDiscord
beforeEach(async () => {
  discord = await startFakeDiscord()
})
afterEach(() => discord.close())

const embeds = [{ description: 'an answer' }]
async function request(method: string, path: string, body?: object) {
  const headers = { authorization: `Bot ${discord.token}`, 'content-type': 'application/json' }
  const sent = { method, headers, ...(body && { body: JSON.stringify(body) }) }
  const response = await fetch(`${discord.api}/v10/channels/${path}`, sent)
  return [response.status, ((await response.json()) as { code?: number }).code]
}
const post = (channel: string, body: object) => request('POST', `${channel}/messages`, body)

test('words stand where embeds are refused', async () => {
  expect(await post(channelId, { embeds })).toEqual([200, undefined])
  expect(await post(bareChannelId, { content: 'words' })).toEqual([200, undefined])
  expect(await post(bareChannelId, { embeds })).toEqual([403, 50013])
})

test('nothing in a channel is for one person alone', async () => {
  expect(await post(channelId, { embeds, flags: 64 })).toEqual([400, 50035])
})

test('what others wrote is theirs to edit, and for moderators to take away', async () => {
  await post(channelId, { embeds })
  const { id = '' } = discord.messages[0] ?? {}
  discord.others.add(id)
  expect(await request('PATCH', `${channelId}/messages/${id}`, { embeds })).toEqual([403, 50005])
  expect(await request('DELETE', `${channelId}/messages/${id}`)).toEqual([403, 50013])
  expect(discord.messages).toHaveLength(1)
})

test('a role may more than everyone, but no more than it says', () => {
  expect([mayBot(channelId, 'pinMessages'), mayBot(channelId, 'manageMessages')]).toEqual([true, false])
})
