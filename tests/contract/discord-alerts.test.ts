// From a danger that somebody tells on Discord to the moderators' channel, with a link as near to it as there is one.

import { beforeEach, expect, test, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { firstLine } from '../support/discord-answers.ts'
import { channelId, mentionOfBot, message, moderatorsChannelId, ownerId, slash } from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

const { room } = withDiscordRoom({ commands })
const fire = 'my pack is on fire'
const here = `https://discord.com/channels/700000000000000003/${channelId}`

const says = (words: string, as: Parameters<typeof message>[1] = {}) => {
  const said = message(`${mentionOfBot} ${words}`, as)
  room().discord.gateway.dispatch('MESSAGE_CREATE', said)
  return said
}
const alerts = () =>
  room()
    .discord.messages.filter(({ body }) => /^EMERGENCY/.test(firstLine(body)))
    .map(({ channel, body }) => [channel, body.content])
/** Of rounds one comes every few seconds. */
const told = (link: string, where = moderatorsChannelId) =>
  vi.waitFor(
    async () => {
      await room().assistant.strike()
      expect(alerts()).toEqual([[where, link]])
    },
    { timeout: 20_000, interval: 500 },
  )

beforeEach(async () => {
  says('house set alerts: here', { channel: moderatorsChannelId, moderator: true })
  await vi.waitFor(() => expect(room().discord.messages).toHaveLength(1), 5000)
})

test('a mention is linked', async () => {
  const { id } = says(fire)
  await told(`${here}/${id}`)
})

test('of a slash command the answer that others see is linked', async () => {
  const asked = room().discord.send(slash('ask', { question: fire }))
  await told(`${here}/${asked.message}`)
})

test('also where it takes its time, and before there is one', async () => {
  room().discord.mishap(/callback$/, { status: 502 }, 2)
  const asked = room().discord.send(slash('ask', { question: fire }))
  await told(`${here}/${asked.message}`)
})

test('of an answer that only its asker sees there is none: the channel is linked', async () => {
  room().discord.send(slash('ask', { question: fire, private: true }))
  await told(here)
})

test.each([
  ['see', 50001, 'give me "View Channel" there'],
  ['write', 50013, 'give me "Send Messages" and "Embed Links"'],
] as const)(
  'where the channel chosen for it refuses to let us %s (%i) their owner is told, and what is missing',
  async (what, code, missing) => {
    room().discord.denied[what] = code
    const asked = room().discord.send(slash('ask', { question: fire }))
    await told(`${here}/${asked.message}`, `9${ownerId}`)
    expect(room().discord.messages.at(-1)?.body.embeds[0].description).toContain(missing)
  },
)
