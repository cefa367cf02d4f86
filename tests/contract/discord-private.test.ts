// Who sees what on Discord: one's own things are for the asker alone unless they say otherwise, and so are taps.

import { expect, test, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { buttonOf, firstLine } from '../support/discord-answers.ts'
import { channelId, edited, mentionOfBot, message, pilot, press, slash, wim } from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

const ephemeral = 64
const { room, answerTo } = withDiscordRoom({ commands })

const seen = async (...of: Parameters<typeof slash>) => (await answerTo(slash(...of))).data.flags
const wren = { name: 'wren', pack: '3S 720 LiHV' }

test.each([
  ['remind list', {}],
  ['export me', {}],
  ['lesson ask', {}],
  ['kit save', wren],
  ['kit list', {}],
])('%s is for the asker alone, and shown where they say so', async (command, options) => {
  expect(await seen(command, options)).toBe(ephemeral)
  expect(await seen(command, { ...options, private: false })).toBeUndefined()
})

const mention = (words: string) => {
  const said = message(`${mentionOfBot} ${words}`)
  room().discord.gateway.dispatch('MESSAGE_CREATE', said)
  return said
}
const heard = () => room().discord.messages.map(({ channel, body }) => [channel, firstLine(body)])
const until = (lines: unknown) => vi.waitFor(() => expect(heard()).toEqual(lines), { timeout: 5000, interval: 10 })
const inPrivate = `9${pilot.id}`
const elsewhere = [channelId, 'I have answered you in private.']

test.each([
  ['kit list', 'yours 1'],
  ['log charge name: wren put-back: 610mAh from: 3.6V', 'Noted'],
  ['remind me in: 40 min', 'remind you'],
])('%s asked by a mention is answered in private', async (words, answer) => {
  await answerTo(slash('kit save', wren))
  mention(words)
  await until([[inPrivate, expect.stringContaining(answer)], elsewhere])
})

test('what an edit turns into a question about their own things is answered in private, and its answer for all goes', async () => {
  const said = mention('current pack: 3S 720 LiHV')
  await until([[channelId, expect.stringContaining('charge')]])
  room().discord.gateway.dispatch('MESSAGE_UPDATE', edited(said, `${mentionOfBot} kit list`))
  await until([[inPrivate, expect.stringContaining('Nothing is saved')], elsewhere])
})

test('in direct messages nobody else is there, so nothing passes away', async () => {
  expect(await seen('kit list', {}, { direct: true })).toBeUndefined()
})

test("what is the club's, and what is computed, is for all", async () => {
  expect(await seen('kit list', { for: 'club' })).toBeUndefined()
  expect(await seen('current', { pack: '3S 720 LiHV' })).toBeUndefined()
})

test('one sees their own things alone also where the house keeps private answers to moderators', async () => {
  await room().memory.house.change('discord:700000000000000003', [{ rule: 'privateAnswers', value: 'moderators' }])
  const { data } = await answerTo(slash('export me'))
  expect([data.flags, firstLine(data)]).toEqual([ephemeral, 'I keep nothing about you.'])
})

test('a button of an answer that its asker sees alone keeps that asker', async () => {
  const { data } = await answerTo(slash('current', { pack: '3S 720 LiHV', private: true }))
  const why = await answerTo(press(buttonOf(data, 'Why'), { ephemeral: true }))
  expect([why.type, why.data.flags]).toEqual([4, ephemeral])
})

test('a button of an answer for all opens for whoever taps, with what is theirs, seen by them alone', async () => {
  await answerTo(slash('kit save', wren))
  await answerTo(slash('kit save', { name: 'wren', pack: '4S 1500 LiPo' }, { by: wim }))
  const { data } = await answerTo(slash('kit list', { private: false }))
  const asksThat = buttonOf(data, 'Ask more').replace('further', 'brief')
  const tapped = await answerTo(press(asksThat, { by: wim }))
  expect(tapped.data.flags).toBe(ephemeral)
  expect(tapped.data.embeds[0].description).toContain('1500')
  expect(tapped.data.embeds[0].description).not.toContain('720')
})
