// Bad weather at Discord: it asks to wait, has faults, falls silent. Nothing is lost, nothing said twice, the log told once.

import { afterEach, beforeEach, describe, expect, it, type TestContext, vi } from 'vitest'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { answersIn } from '../support/discord-answers.ts'
import { gatedCommand } from '../support/discord-commands.ts'
import { mentionOfBot, message, slash } from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'
import { publicHex, signed } from '../support/discord-signature.ts'

const patient = { timeout: 20_000, interval: 10 }

async function opened({ onTestFinished }: TestContext, rules: Parameters<typeof openDiscordRoom>[0] = {}) {
  const room = await openDiscordRoom(rules)
  onTestFinished(async () => {
    await room.close()
    expect(room.discord.refused).toEqual([])
  })
  const surface = room.surface()
  await surface.start()
  return { ...room, surface }
}
type Opened = Pick<DiscordRoom, 'discord' | 'logged'>

const cells = ['1S', '2S', '3S']
const ask = ({ discord }: Opened) => {
  for (const cell of cells)
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: ${cell} 450 LiPo`))
}
/** Each once. Asked again behind a stop, when all that was tried has ended, nothing may stand beside them. */
async function expectAnswers({ discord }: Opened): Promise<void> {
  await vi.waitFor(() => expect(discord.messages.length).toBeGreaterThanOrEqual(cells.length), patient)
  expect(answersIn(discord).toSorted()).toEqual(cells.map(cell => `Set 0.5 A for ${cell} 450 LiPo.`))
}
const told = ({ logged }: Opened, words: string) => logged().split(words).length - 1
const tries = ({ discord }: Opened, path: RegExp) => discord.requests.filter(request => path.test(request)).length
const posted = /^POST \/channels\/\d+\/messages$/

// They wait together.
describe.concurrent('messages', () => {
  it('through a storm of 502', async context => {
    const room = await opened(context)
    room.discord.mishap(/messages$/, { status: 502 }, 4)
    ask(room)
    await expectAnswers(room)
    await room.surface.stop()
    await expectAnswers(room)
    expect([tries(room, posted), told(room, 'does not answer')]).toEqual([cells.length + 4, 1])
  })

  it('through silence, whether or not they had come through', async context => {
    const room = await opened(context, { request_ms: 200 })
    room.discord.mishap(/messages$/, 'silent')
    room.discord.mishap(/messages$/, 'lost', 2)
    room.discord.mishap(/messages$/, 'cut')
    ask(room)
    await expectAnswers(room)
    await room.surface.stop()
    await expectAnswers(room)
    expect([tries(room, posted), told(room, 'does not answer')]).toEqual([cells.length + 4, 1])
  })
})

describe('messages, when it lasts', () => {
  beforeEach(() => void vi.useFakeTimers({ toFake: ['setTimeout', 'clearTimeout'], shouldAdvanceTime: true }))
  afterEach(() => void vi.useRealTimers())

  it('come after a minute, and not before, where Discord asks for one', async context => {
    const room = await opened(context)
    room.discord.mishap(/messages$/, { status: 429, retryAfter_s: 60 })
    ask(room)
    await vi.waitUntil(() => told(room, 'asks to wait') === 1, patient)
    await vi.advanceTimersByTimeAsync(55_000)
    expect([tries(room, posted), room.discord.messages]).toEqual([1, []])
    await vi.advanceTimersByTimeAsync(6000)
    await expectAnswers(room)
    await room.surface.stop()
    expect([tries(room, posted), told(room, 'asks to wait')]).toEqual([cells.length + 1, 1])
  })

  /** Each of ten seconds by the usual patience, and pauses that grow to half a minute. */
  it('come after minutes of silence', async context => {
    const room = await opened(context, { request_ms: 100 })
    const silent = 9
    room.discord.mishap(/messages$/, 'silent', silent)
    ask(room)
    const looked = async () => {
      await vi.advanceTimersByTimeAsync(2000)
      expect(room.discord.messages).toHaveLength(cells.length)
    }
    await vi.waitFor(looked, patient)
    await expectAnswers(room)
    await room.surface.stop()
    expect([tries(room, posted), told(room, 'does not answer')]).toEqual([cells.length + silent, 1])
  })
})

describe.concurrent('interactions', () => {
  it('by a socket that is half-open are answered in time', async context => {
    const { discord, surface } = await opened(context)
    discord.mishap(/callback$/, 'silent')
    const asked = discord.send(slash('bench', { pack: '1S 300 LiPo' }))
    await asked.acknowledgement
    await surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback'])
  })

  const storm = ({ discord }: Opened) => {
    discord.mishap(/original$/, { status: 429, retryAfter_s: 1 })
    discord.mishap(/original$/, { status: 502 }, 3)
    discord.mishap(/original$/, 'cut')
  }

  it('that were promised get their answer behind a storm', async context => {
    const { command, open } = gatedCommand()
    const room = await opened(context, { commands: [command], patience_ms: 20 })
    const asked = room.discord.send(slash('gated', { pack: '1S 300 LiPo' }))
    await asked.acknowledgement
    storm(room)
    open()
    await room.surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
    expect([told(room, 'asks to wait'), told(room, 'does not answer')]).toEqual([1, 1])
  })

  it('so does what was promised by HTTP', async context => {
    const { command, open } = gatedCommand()
    const room = await opened(context, { commands: [command], patience_ms: 20 })
    const endpoint = createDiscordEndpoint({ ...room.parts(), publicKey: publicHex })
    await endpoint.start()
    const interaction = slash('gated', { pack: '1S 300 LiPo' })
    const asked = room.discord.expect(interaction)
    const body = JSON.stringify(interaction)
    await endpoint.route.answer({ headers: signed(body), body: Buffer.from(body) })
    await asked.acknowledgement
    storm(room)
    open()
    await endpoint.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
    expect([told(room, 'asks to wait'), told(room, 'does not answer')]).toEqual([1, 1])
  })

  it('whose public promise was taken back, unheard, are still answered in private', async context => {
    const { command, open } = gatedCommand()
    const { discord, surface } = await opened(context, { commands: [command], patience_ms: 20, request_ms: 200 })
    const asked = discord.send(slash('gated', { pack: 'odd' }))
    await asked.acknowledgement
    discord.mishap(/original$/, 'lost')
    open()
    await surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'removal', 'followUp'])
  })
})

describe('the gateway', () => {
  it('half-open is noticed, and what was said meanwhile answered', async context => {
    const room = await opened(context, { heartbeat_ms: 300 })
    room.discord.gateway.fallSilent()
    ask(room)
    await expectAnswers(room)
    await room.surface.stop()
    await expectAnswers(room)
    expect([room.discord.gateway.sessions.resumed, told(room, 'reconnecting')]).toEqual([1, 1])
  })
})
