// Discord's two doors: what comes in by a signed request gets the answer that it would get by the gateway.

import { afterEach, beforeEach, describe, expect, it, vi } from 'vitest'
import { commands } from '../../commands/index.ts'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { buttonOf } from '../support/discord-answers.ts'
import {
  askAbout,
  type Interaction,
  moderatorPermissions,
  newId,
  press,
  slash,
  submit,
  typing,
} from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'
import { publicHex, signed } from '../support/discord-signature.ts'

// biome-ignore lint/suspicious/noExplicitAny: bodies are judged by the payload checks.
type Body = any

let room: DiscordRoom
let endpoint: ReturnType<typeof createDiscordEndpoint>

beforeEach(async () => {
  room = await openDiscordRoom({ commands })
  endpoint = createDiscordEndpoint({ ...room.parts(), publicKey: publicHex })
  await Promise.all([room.surface().start(), endpoint.start()])
})
afterEach(async () => {
  const { refused } = room.discord
  await endpoint.stop()
  await room.close()
  expect(refused).toEqual([])
})

async function byGateway(interaction: Interaction): Promise<Body> {
  const asked = room.discord.send(interaction)
  return (await vi.waitUntil(() => asked.told[0], { timeout: 5000, interval: 5 })).body
}

async function byHttp(interaction: Interaction): Promise<Body> {
  const body = JSON.stringify({ ...interaction, id: newId() })
  const answer = await endpoint.route.answer({ headers: signed(body), body: Buffer.from(body) })
  return JSON.parse(answer.body)
}

const question = 'current pack: 3S 720 LiHV charger: 0.5/1/2/4A'
const noCard = { title: 'What never was' }
const answered = () => byGateway(slash('ask', { question }))
const button = async (label: string) => buttonOf((await answered()).data, label)

const same = (interaction: () => Interaction | Promise<Interaction>) => async () => {
  const asked = await interaction()
  const there = await byGateway(asked)
  expect(await byHttp(asked)).toEqual(there)
}

describe('the same by either', () => {
  it(
    'plain words',
    same(() => slash('ask', { question: 'what current for a 4S 1500 LiPo with a charger 1/2/3A?' })),
  )
  it(
    'a danger',
    same(() => slash('ask', { question: 'my pack is puffed, can I charge it' })),
  )
  it(
    'a command',
    same(() => slash('percent', { pack: '3S 720 LiHV', at: '11.55V' })),
  )
  it(
    'what is typed',
    same(() => typing('ask', 'question', 'how long for a 4')),
  )
  it(
    'a layer',
    same(async () => press(await button('Why'))),
  )
  it(
    'what is offered',
    same(async () => press(await button('To storage'))),
  )
  it(
    'words behind an answer',
    same(async () => submit(await button('Ask more'), 'at 0.5A')),
  )
  it(
    'the window for them',
    same(async () => press(await button('Ask more'))),
  )
  it(
    'what is their own',
    same(() => slash('kit list')),
  )
  it(
    'what they ask alone',
    same(() => slash('ask', { question, private: true })),
  )
  it(
    'a message of somebody',
    same(() => askAbout('what current for a 4S 1500 LiPo?')),
  )
  it(
    'a member who does not moderate',
    same(() => slash('answer remove', noCard)),
  )
  it(
    'a moderator',
    same(() => slash('answer remove', noCard, { permissions: moderatorPermissions })),
  )
})
