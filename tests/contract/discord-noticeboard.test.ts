// The noticeboard of Discord against its REST rules: what it sends, and what each refusal becomes.

import { afterEach, beforeEach, expect, test } from 'vitest'
import type { Missing, Noticeboard, Posted } from '../../src/assistant/cards/noticeboard.ts'
import { generalCaution } from '../../src/assistant/verdict.words.ts'
import { readCustomId } from '../../src/discord/messages/custom-id.ts'
import { createDiscordNoticeboard } from '../../src/discord/noticeboard.ts'
import { english } from '../../src/ground/locale.ts'
import type { Memory } from '../../src/memory/memory.ts'
import { type FakeChannels, startFakeChannels } from '../support/fake-channels.ts'
import { plainReply } from '../support/plain-command.ts'
import { openTestMemory } from '../support/test-memory.ts'

const server = '100000000000000001'
const bench = '100000000000000002'
const wim = '100000000000000003'
const place = `discord:${bench}`

let discord: FakeChannels
let memory: Memory
let board: Noticeboard
beforeEach(async () => {
  discord = await startFakeChannels(server, [bench])
  memory = await openTestMemory()
  board = createDiscordNoticeboard({ ...discord, questions: memory.questions })
})
afterEach(async () => {
  expect(discord.refused).toEqual([])
  await discord.close()
  await memory.close()
})

const reply = (headline: string) =>
  plainReply(
    { command: 'current', readAs: '3S 720 mAh LiHV', question: 'current pack: 3S 720mAh LiHV' },
    { verdict: 'go', headline, working: ['1C × 720 mAh = 0.72 A.'], cautions: [generalCaution(english('.'))] },
  )

/** What is missing, in English. */
function told(outcome: object | string): string {
  if (typeof outcome === 'string' || !('missing' in outcome)) throw new Error('nothing is missing')
  return (outcome as Missing).missing(english('.'))
}

async function posted(headline = 'Wren: Set 0.5 A.', key = 'one'): Promise<Posted> {
  const outcome = await board.post(place, { reply: reply(headline), key })
  if ('missing' in outcome) throw new Error(told(outcome))
  return outcome
}
const only = () => {
  expect(discord.messages).toHaveLength(1)
  const [message] = discord.messages
  if (!message) throw new Error('no message')
  return message
}

test('a card is posted once for its key, calls nobody, and has a link and buttons for its layers', async () => {
  const first = await posted()
  expect(await posted()).toEqual(first)
  const { id, body } = only()
  expect(first).toEqual({
    place,
    message: `discord:${id}`,
    link: `https://discord.com/channels/${server}/${bench}/${id}`,
  })
  expect(body.embeds[0].description).toContain('Set 0.5\u00a0A')
  expect(body.embeds[0].description).toContain(generalCaution(english('.')).short)
  expect(body.allowed_mentions.parse).toEqual([])
  expect(body.content).toBeUndefined()
  const [button] = body.components[0].components
  expect(readCustomId(button.custom_id)?.question).toEqual({ whole: 'current pack: 3S 720mAh LiHV' })
})

test('a reminder calls its person and nobody else', async () => {
  await board.post(place, { reply: reply('Check @everyone.'), key: 'two', calls: [`discord:${wim}`] })
  const { body } = only()
  expect(body.content).toBe(`<@${wim}>`)
  expect(body.allowed_mentions).toEqual({ users: [wim] })
})

test('a link stands where it can be followed, and calls nobody', async () => {
  const link = `https://discord.com/channels/${server}/${bench}/1`
  await board.post(place, { reply: reply('EMERGENCY'), key: 'three', links: [link] })
  expect(only().body.content).toBe(link)
  expect(only().body.allowed_mentions).toEqual({ users: [] })
})

test('an answer is struck line by line under why, without buttons; what is gone or of others is left', async () => {
  const card = await posted()
  const why = english('.').own('WRONG: do not act on it.')
  expect(await board.strike(card, why)).toMatchObject({ link: card.link })
  const { body } = only()
  const [head, first, second] = body.embeds[0].description.split('\n')
  expect(head).toBe('**WRONG: do not act on it.**')
  expect([first, second]).toEqual([expect.stringMatching(/^~~\*\*GO .*~~$/), expect.stringMatching(/^~~.*~~$/)])
  expect(body.components).toEqual([])
  discord.others.add(card.message.replace('discord:', ''))
  expect(await board.strike(card, why)).toBe('gone')
  await board.remove(card)
  expect(await board.strike(card, why)).toBe('gone')
})

test('it is pinned, edited in place with its pin, and taken away', async () => {
  const card = await posted()
  expect(await board.pin(card)).toBe('pinned')
  expect(await board.edit(card, reply('Wren: Set 0.4 A.'))).toBe('edited')
  expect(only().pinned).toBe(true)
  expect(only().body.embeds[0].description).toContain('Set 0.4\u00a0A')
  await board.remove(card)
  expect(discord.messages).toEqual([])
})

test('what people deleted is gone, and deleting it again is fine', async () => {
  const card = await posted()
  discord.messages.length = 0
  expect(await board.edit(card, reply('x'))).toBe('gone')
  await board.remove(card)
  const elsewhere = { ...card, place: 'discord:100000000000000009' }
  expect(await board.edit(elsewhere, reply('x'))).toBe('gone')
})

test.each([
  [50013, '"Pin Messages"'],
  [30003, 'as many pinned messages'],
  [50001, '"View Channel"'],
])('a pin refused with %i says what is missing: %s', async (code, missing) => {
  const card = await posted()
  discord.denied.pin = code
  expect(told(await board.pin(card))).toContain(missing)
})

test.each([
  ['write', 50013, '"Send Messages"'],
  ['see', 50001, '"View Channel"'],
] as const)('a post without permission to %s (%i) says so: %s', async (what, code, missing) => {
  discord.denied[what] = code
  const outcome = await board.post(place, { reply: reply('x'), key: 'three' })
  expect(told(outcome)).toContain(missing)
})

test('a refusal that we do not know rejects', async () => {
  discord.denied.write = 99999
  await expect(board.post(place, { reply: reply('x'), key: 'four' })).rejects.toThrow()
})

test('a direct message goes to the person, or says that they are closed', async () => {
  const notice = { reply: reply('Check the charge.'), key: 'five', calls: [`discord:${wim}`] }
  expect(await board.direct(`discord:${wim}`, notice)).toBe('sent')
  expect(only().channel).toBe(`9${wim}`)
  discord.denied.direct = 50007
  expect(told(await board.direct(`discord:${wim}`, { ...notice, key: 'six' }))).toBe(
    'Direct messages to that person are closed to me.',
  )
})
