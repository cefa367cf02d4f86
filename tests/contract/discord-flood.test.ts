// One member asks a hundred questions at once: they get their share and one kind line, and nobody else waits for it.

import { expect, test, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { answersIn } from '../support/discord-answers.ts'
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
const current = (mAh: number) => `current pack: 3S ${mAh} LiHV charger: 0.5/1/2/4A`

async function flooded(): Promise<readonly string[]> {
  const asked = Array.from({ length: flood }, (_, at) => ask(current(500 + at)))
  await vi.waitFor(() => expect(answersIn(room().discord)).toContain(kindLine), 10_000)
  return asked
}

test('a flood is answered within limits, others and an emergency among it at once', async () => {
  const asked = await flooded()
  const since = performance.now()
  const others = ask(current(720), wim)
  const fire = ask('my pack is on fire')
  await vi.waitFor(() => expect([answered(others), answered(fire)]).not.toContain(undefined), 10_000)
  for (const one of [others, fire]) expect((answered(one)?.at ?? Infinity) - since).toBeLessThan(2000)
  const given = answersIn(room().discord)
  expect(given.filter(line => line === kindLine)).toHaveLength(1)
  const ofFlood = asked.filter(answered)
  expect(ofFlood.length).toBeGreaterThan(30)
  expect(ofFlood.length).toBeLessThan(40)
})

test('a slash command is never left without a word, which only its asker sees', async () => {
  await flooded()
  const { data } = await answerTo(slash('current', { pack: '3S 720 LiHV' }))
  expect([data.flags, answersIn({ messages: [{ body: data }] as never })]).toEqual([64, [kindLine]])
})
