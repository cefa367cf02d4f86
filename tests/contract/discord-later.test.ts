// A reply that comes later than its question, by the way that the question left open: once, and to whom it belongs.

import { SnowflakeUtil } from 'discord.js'
import { afterEach, beforeEach, expect, test, vi } from 'vitest'
import type { Occasion } from '../../src/assistant/occasion.ts'
import type { Reply } from '../../src/assistant/reply.ts'
import type { Surface } from '../../src/assistant/running/assistant.ts'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { askedBy, askedIn } from '../../src/discord/messages/later.ts'
import { occasionOf } from '../../src/discord/platform/occasion.ts'
import { firstLine } from '../support/discord-answers.ts'
import { channelId, type Interaction, moderatorsChannelId, newId, pilot, slash } from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'

const expiry_ms = 400
let room: DiscordRoom
let surface: Surface
let reply: Reply
beforeEach(async () => {
  room = await openDiscordRoom({ expiry_ms })
  surface = room.surface()
  await surface.start()
  const occasion = occasionBy(slash('bench', { pack: '3S 720 LiHV' }))
  reply = await room.assistant.answer('bench pack: 3S 720 LiHV', occasion)
})
afterEach(() => room.close())

function occasionBy(interaction: Interaction): Occasion {
  const one = interaction as never
  const occasion = occasionOf(one, () => undefined)
  if (!occasion) throw new Error('nobody asks')
  return { ...occasion, asked: askedBy(one) }
}
const inMessage = (channel = channelId): Occasion => ({
  ...occasionBy(slash('bench')),
  asked: askedIn({ channel, message: newId() }),
})
/** As the table of what is due gives it back. */
const kept = (occasion: Occasion): Occasion => JSON.parse(JSON.stringify(occasion))
/** About one's own things, whatever its words. */
const noted = () => ({ ...reply, question: 'log charge name: wren put-back: 640mAh' })
const deliver = (occasion: Occasion) => surface.deliver(kept(occasion), reply)

test('in place of what an earlier process promised, where the question comes again', async () => {
  for (const [options, told] of [
    [{}, ['edit']],
    [{ private: true }, ['removal', 'followUp']],
  ] as const) {
    const id = String(SnowflakeUtil.generate({ timestamp: Date.now() - 10_000 }))
    const interaction = { ...slash('bench', { pack: '3S 720 LiHV', ...options }), id }
    const asked = room.discord.expect(interaction)
    asked.acknowledged = true
    room.discord.gateway.dispatch('INTERACTION_CREATE', interaction)
    await vi.waitFor(() => expect(asked.told.map(({ what }) => what)).toEqual(told), { timeout: 5000 })
    expect(JSON.stringify(asked.told.at(-1)?.body)).toContain('3S 720')
  }
})

test('in place of what was promised, as often as it takes', async () => {
  const interaction = slash('bench')
  const asked = room.discord.expect(interaction)
  asked.acknowledged = true
  const occasion = occasionBy(interaction)
  expect(await deliver(occasion)).toBe('delivered')
  expect(await deliver(occasion)).toBe('delivered')
  expect(asked.told.map(({ what }) => what)).toEqual(['edit', 'edit'])
  expect(asked.told[0]?.body.embeds[0].description).toContain('3S 720 LiHV')
})

test('what is for the asker alone never where others read, though it was promised there', async () => {
  const interaction = slash('bench')
  const asked = room.discord.expect(interaction)
  asked.acknowledged = true
  asked.told.push({ what: 'callback', at: 0, files: [], body: { type: 5 } })
  expect(await surface.deliver(kept(occasionBy(interaction)), noted())).toBe('delivered')
  expect(asked.told.slice(1)).toMatchObject([{ what: 'removal' }, { what: 'followUp', body: { flags: 64 } }])
})

test('what is for the asker alone in private, also where an earlier process ended halfway', async () => {
  const occasion = inMessage()
  room.discord.mishap(new RegExp(`channels/${channelId}/messages$`), { status: 403 })
  await surface.deliver(kept(occasion), noted())
  await surface.deliver(kept(occasion), noted())
  expect(room.discord.messages.map(({ channel, body }) => [channel, firstLine(body)])).toEqual([
    [`9${pilot.id}`, expect.stringContaining('3S 720 LiHV')],
    [channelId, 'I have answered you in private.'],
  ])
})

test('where nothing was promised and it is in time, to the asker alone', async () => {
  const interaction = slash('bench')
  const asked = room.discord.expect(interaction)
  expect(await deliver(occasionBy(interaction))).toBe('delivered')
  expect(asked.told).toMatchObject([{ what: 'callback', body: { data: { flags: 64 } } }])
})

test('where nothing was promised and it is too late, never', async () => {
  const interaction = slash('bench')
  const asked = room.discord.expect(interaction)
  await new Promise(resolve => setTimeout(resolve, expiry_ms + 50))
  expect(await deliver(occasionBy(interaction))).toEqual({ closed: 'Unknown interaction' })
  expect(asked.told).toEqual([])
})

test('in reply to a message, once, and noted', async () => {
  const occasion = inMessage()
  await deliver(occasion)
  await deliver(occasion)
  expect(room.discord.messages).toHaveLength(1)
  const noted = await room.memory.answered.byQuestion(occasion.asked?.id ?? '')
  expect(noted).toMatchObject({ askedBy: occasion.asker.id, answerMessage: `discord:${room.discord.messages[0]?.id}` })
})

test('a connection that stays broken is worth another try later, a refusal is not', async () => {
  const occasion = inMessage(moderatorsChannelId)
  room.discord.mishap(/messages$/, 'cut', 3)
  await expect(deliver(occasion)).rejects.toThrow()
  expect(await deliver(occasion)).toBe('delivered')
  const wrong = { ...occasion, asked: askedIn({ channel: 'no-channel', message: newId() }) }
  expect(await deliver(wrong)).toMatchObject({ closed: expect.any(String) })
})

test('the HTTP endpoint, which may write no messages, says so', async () => {
  const endpoint = createDiscordEndpoint({ ...room.parts(), publicKey: '00'.repeat(32) })
  expect(await endpoint.deliver(kept(inMessage()), reply)).toMatchObject({ closed: channelId })
})
