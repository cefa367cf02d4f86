// A moderator replies "wrong" to an answer on Discord: it is struck there, and whoever asked for it or pressed on it is named.

import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import { answersIn, buttonOf } from '../support/discord-answers.ts'
import { mentionOfBot, message, ownerId, pilot, press, wim } from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'

let room: DiscordRoom
beforeEach(async () => {
  room = await openDiscordRoom()
  await room.surface().start()
})
afterEach(async () => {
  const { refused } = room.discord
  await room.close()
  expect(refused).toEqual([])
})

const told = (event: string, data: unknown) => room.discord.gateway.dispatch(event, data)
const until = (holds: () => unknown) => vi.waitFor(holds, { timeout: 5000, interval: 10 })

async function answered(): Promise<string> {
  told('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 1S 300 LiPo`))
  await until(() => expect(room.discord.messages).toHaveLength(1))
  return room.discord.messages[0]?.id ?? ''
}
const says = (words: string, replyTo: string, more: object = {}) =>
  told('MESSAGE_CREATE', message(words, { replyTo, ...more }))

test('it is struck under a line that says so, and its readers are mentioned', async () => {
  const id = await answered()
  const pressed = press(buttonOf(room.discord.messages[0]?.body, 'Why'), { on: id, by: wim })
  room.discord.send(pressed)
  await vi.waitFor(async () => expect(await room.memory.answered.readersOf(`discord:${id}`)).toHaveLength(1))
  says('Wrong!', id, { moderator: true, author: { ...pilot, id: ownerId } })
  await until(() => expect(room.discord.messages).toHaveLength(2))
  const [answer, notice] = room.discord.messages
  expect(answer?.body.embeds[0].description).toMatch(/^\*\*WRONG: .*\*\*\n~~\*\*/)
  expect(answer?.body.components).toEqual([])
  expect(new Set(notice?.body.allowed_mentions.users)).toEqual(new Set([pilot.id, wim.id]))
  expect(notice?.body.content).toMatch(new RegExp(`/${id}$`))
})

test('a member who does not moderate strikes nothing', async () => {
  const id = await answered()
  says('wrong', id)
  told('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 2S 450 LiPo`))
  await until(() => expect(answersIn(room.discord)).toHaveLength(2))
  expect(answersIn(room.discord)).not.toContainEqual(expect.stringContaining('WRONG'))
  expect(room.discord.messages.map(({ edits }) => edits)).toEqual([0, 0])
})
