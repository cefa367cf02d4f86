// What a missing permission costs on Discord: not the answer, which comes in private, nor that anybody is told of it.

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { exportMe } from '../../commands/me/me.ts'
import { exportMeWords } from '../../commands/me/me.words.ts'
import { entry } from '../../src/assistant/entry.ts'
import { firstLine } from '../support/discord-answers.ts'
import {
  bareChannelId,
  channelId,
  mentionOfBot,
  message,
  moderatorsChannelId,
  ownerId,
  pilot,
} from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

beforeEach(() => void vi.useFakeTimers({ toFake: ['Date'], shouldAdvanceTime: true }))
afterEach(() => void vi.useRealTimers())
const { room } = withDiscordRoom({ commands: [entry(exportMe, exportMeWords)] })

const ask = (words: string, of: Parameters<typeof message>[1] = {}) => {
  const said = message(`${mentionOfBot} ${words}`, of)
  room().discord.gateway.dispatch('MESSAGE_CREATE', said)
  return said
}
const heard = () =>
  room().discord.messages.map(({ channel, body }) => [channel, body.embeds ? firstLine(body) : body.content])
const until = (lines: readonly (readonly string[])[]) =>
  vi.waitFor(() => expect(heard()).toEqual(lines), { timeout: 5000, interval: 10 })

const inPrivate = `9${pilot.id}`
const lacks = (what: string, where: string) =>
  `I may not answer in #${where}: what I need there is "${what}". A moderator there can change that.`
const embeds = lacks('Embed Links', 'quiet')
const answer = 'Set 0.5 A for 1S 300 LiPo.'

test('who asked is told in private by name of permission and channel, with the answer; moderators once a day', async () => {
  const said = ask('bench pack: 1S 300 LiPo', { channel: bareChannelId })
  await until([
    [inPrivate, embeds],
    [moderatorsChannelId, embeds],
    [inPrivate, answer],
  ])
  // It is noted when it is out, a moment after it is seen there.
  const noted = () => room().memory.answered.byQuestion(`discord:${said.id}`)
  await vi.waitFor(async () => expect(await noted()).toMatchObject({ place: `discord:${inPrivate}` }), 10_000)
  ask('bench pack: 1S 300 LiPo', { channel: bareChannelId })
  await until([
    [inPrivate, embeds],
    [moderatorsChannelId, embeds],
    [inPrivate, answer],
    [inPrivate, answer],
  ])
  expect(
    room()
      .logged()
      .match(/permissions are missing/g),
  ).toHaveLength(1)
  vi.setSystemTime(Date.now() + 86_400_000)
  ask('bench pack: 1S 300 LiPo', { channel: bareChannelId })
  await vi.waitFor(() =>
    expect(heard().slice(4)).toEqual([
      [inPrivate, embeds],
      [moderatorsChannelId, embeds],
      [inPrivate, answer],
    ]),
  )
})

test('moderators are told in the channel that they chose for it', async () => {
  const rule = { rule: 'moderatorsRoom', value: `discord:${channelId}` } as const
  await room().memory.house.change('discord:700000000000000003', [rule])
  ask('bench pack: 1S 300 LiPo', { channel: bareChannelId })
  await until([
    [inPrivate, embeds],
    [channelId, embeds],
    [inPrivate, answer],
  ])
})

test('where they are closed to us, words alone go to the channel', async () => {
  room().discord.denied.direct = 50007
  ask('bench pack: 1S 300 LiPo', { channel: bareChannelId })
  await until([
    [bareChannelId, embeds],
    [moderatorsChannelId, embeds],
  ])
})

test('what Discord refuses though it seemed allowed is told too, to the owner where the channel for moderators is closed', async () => {
  room().discord.denied.write = 50013
  ask('bench pack: 1S 300 LiPo')
  const send = lacks('Send Messages', 'charging')
  await until([
    [inPrivate, send],
    [`9${ownerId}`, send],
    [inPrivate, answer],
  ])
})

test('what is for one person alone goes to them, and the channel is only told that it does', async () => {
  ask('export me')
  await until([
    [inPrivate, 'I keep nothing about you.'],
    [channelId, 'I have answered you in private.'],
  ])
  room().discord.denied.direct = 50007
  ask('export me')
  await vi.waitFor(() => expect(heard().at(-1)).toEqual([channelId, 'I could not reach you in private.']))
})
