// One member asks a hundred questions at once: they get their share and one kind line, and nobody else waits for it.

import { expect, test, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { answersIn, firstLine } from '../support/discord-answers.ts'
import { mentionOfBot, message, slash, wim } from '../support/discord-events.ts'
import { withDiscordRoom } from '../support/with-discord-room.ts'

const { room, answerTo } = withDiscordRoom({ commands })
const flood = 100
const kindLine = 'That is a lot at once, and I want to be there for the others too.'

function ask(words: string, author?: object): string {
  const said = message(`${mentionOfBot} ${words}`, author && { author })
  room().discord.gateway.dispatch('MESSAGE_CREATE', said)
  return said.id
}
const answered = (id: string) => room().discord.messages.find(({ body }) => body.message_reference?.message_id === id)
const places = (ids: readonly string[]) =>
  ids.map(id => room().discord.messages.findIndex(({ body }) => body.message_reference?.message_id === id))
const current = (mAh: number) => `current pack: 3S ${mAh} LiHV charger: 0.5/1/2/4A`

/** Discord asks to wait with the first answer, so that the others are all there when they may go on. */
function floods(): readonly string[] {
  room().discord.mishap(/^\/channels\/\d+\/messages$/, { status: 429, retryAfter_s: 3 })
  return Array.from({ length: flood }, (_, at) => ask(current(500 + at)))
}

test('a flood is answered within limits, others and an emergency among it at once', async () => {
  const asked = floods()
  const others = ask(current(720), wim)
  const fire = ask('my pack is on fire')
  await vi.waitFor(() => expect(asked.filter(answered).length).toBeGreaterThan(30), 20_000)
  // One was on its way, and nobody is answered more than three times in a row.
  expect(places([fire, others])).toEqual([1, 3])
  expect(answersIn(room().discord).filter(line => line === kindLine)).toHaveLength(1)
})

test('a slash command is never left without a word, which only its asker sees', async () => {
  floods()
  await vi.waitFor(() => expect(room().logged()).toContain('asks to wait'), 5000)
  const { data } = await answerTo(slash('current', { pack: '3S 720 LiHV' }))
  expect([data.flags, firstLine(data)]).toEqual([64, kindLine])
})
