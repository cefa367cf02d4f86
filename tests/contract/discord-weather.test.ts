// Bad weather at Discord: it asks to wait, has faults, falls silent. Nothing is lost, nothing said twice, the log told once.

import { afterEach, describe, expect, it, vi } from 'vitest'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { answersIn } from '../support/discord-answers.ts'
import { gatedCommand } from '../support/discord-commands.ts'
import { mentionOfBot, message, slash } from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'
import { publicHex, signed } from '../support/discord-signature.ts'

const patient = { timeout: 20_000, interval: 10 }

let room: DiscordRoom
async function opened(rules: Parameters<typeof openDiscordRoom>[0] = {}) {
  room = await openDiscordRoom(rules)
  const surface = room.surface()
  await surface.start()
  return { ...room, surface }
}
afterEach(async () => {
  const { refused } = room.discord
  await room.close()
  expect(refused).toEqual([])
})

const cells = ['1S', '2S', '3S']
const ask = () => {
  for (const cell of cells)
    room.discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: ${cell} 450 LiPo`))
}
/** Each once. Asked again behind a stop, when all that was tried has ended, nothing may stand beside them. */
async function expectAnswers(): Promise<void> {
  await vi.waitFor(() => expect(room.discord.messages.length).toBeGreaterThanOrEqual(cells.length), patient)
  expect(answersIn(room.discord).toSorted()).toEqual(cells.map(cell => `Set 0.5 A for ${cell} 450 LiPo.`))
}
const told = (words: string) => room.logged().split(words).length - 1
const tries = (path: RegExp) => room.discord.requests.filter(request => path.test(request)).length
const posted = /^POST \/channels\/\d+\/messages$/

describe('messages', () => {
  it('after a long wait', async () => {
    const { discord, surface } = await opened()
    discord.mishap(/messages$/, { status: 429, retryAfter_s: 2 })
    const since = performance.now()
    ask()
    await expectAnswers()
    expect(performance.now() - since).toBeGreaterThan(2000)
    await surface.stop()
    await expectAnswers()
    expect([tries(posted), told('asks to wait')]).toEqual([cells.length + 1, 1])
  })

  it('through a storm of 502', async () => {
    const { discord, surface } = await opened()
    discord.mishap(/messages$/, { status: 502 }, 4)
    ask()
    await expectAnswers()
    await surface.stop()
    await expectAnswers()
    expect([tries(posted), told('does not answer')]).toEqual([cells.length + 4, 1])
  })

  it('through silence, whether or not they had come through', async () => {
    const { discord, surface } = await opened({ request_ms: 200 })
    discord.mishap(/messages$/, 'silent')
    discord.mishap(/messages$/, 'lost', 2)
    discord.mishap(/messages$/, 'cut')
    ask()
    await expectAnswers()
    await surface.stop()
    await expectAnswers()
    expect([tries(posted), told('does not answer')]).toEqual([cells.length + 4, 1])
  })
})

describe('interactions', () => {
  it('by a socket that is half-open are answered in time', async () => {
    const { discord, surface } = await opened()
    discord.mishap(/callback$/, 'silent')
    const asked = discord.send(slash('bench', { pack: '1S 300 LiPo' }))
    await asked.acknowledgement
    await surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback'])
  })

  const storm = () => {
    room.discord.mishap(/original$/, { status: 429, retryAfter_s: 1 })
    room.discord.mishap(/original$/, { status: 502 }, 3)
    room.discord.mishap(/original$/, 'cut')
  }

  it('that were promised get their answer behind a storm', async () => {
    const { command, open } = gatedCommand()
    const { discord, surface } = await opened({ commands: [command], patience_ms: 20 })
    const asked = discord.send(slash('gated', { pack: '1S 300 LiPo' }))
    await asked.acknowledgement
    storm()
    open()
    await surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
    expect([told('asks to wait'), told('does not answer')]).toEqual([1, 1])
  })

  it('so does what was promised by HTTP', async () => {
    const { command, open } = gatedCommand()
    const { discord, parts } = await opened({ commands: [command], patience_ms: 20 })
    const endpoint = createDiscordEndpoint({ ...parts(), publicKey: publicHex })
    await endpoint.start()
    const interaction = slash('gated', { pack: '1S 300 LiPo' })
    const asked = discord.expect(interaction)
    const body = JSON.stringify(interaction)
    await endpoint.route.answer({ headers: signed(body), body: Buffer.from(body) })
    await asked.acknowledgement
    storm()
    open()
    await endpoint.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
    expect([told('asks to wait'), told('does not answer')]).toEqual([1, 1])
  })

  it('whose public promise was taken back, unheard, are still answered in private', async () => {
    const { command, open } = gatedCommand()
    const { discord, surface } = await opened({ commands: [command], patience_ms: 20, request_ms: 200 })
    const asked = discord.send(slash('gated', { pack: 'odd' }))
    await asked.acknowledgement
    discord.mishap(/original$/, 'lost')
    open()
    await surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'removal', 'followUp'])
  })
})

describe('the gateway', () => {
  it('half-open is noticed, and what was said meanwhile answered', async () => {
    const { discord, surface } = await opened({ heartbeat_ms: 300 })
    discord.gateway.fallSilent()
    ask()
    await expectAnswers()
    await surface.stop()
    await expectAnswers()
    expect([discord.gateway.sessions.resumed, told('reconnecting')]).toEqual([1, 1])
  })
})
