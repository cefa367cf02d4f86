// A real discord.js client against a fake Discord that keeps Discord's rules: what arrives there, and how often.

import { afterEach, describe, expect, it, vi } from 'vitest'
import { buttonOf } from '../support/discord-answers.ts'
import { gatedCommand, leakyError, trayExport } from '../support/discord-commands.ts'
import {
  channelId,
  mentionOfBot,
  message,
  moderatorPermissions,
  press,
  slash,
  typing,
} from '../support/discord-events.ts'
import { type DiscordRoom, openDiscordRoom } from '../support/discord-room.ts'
import type { Asked } from '../support/fake-discord.ts'

let room: DiscordRoom | undefined

async function opened(rules: Parameters<typeof openDiscordRoom>[0] = {}) {
  room = await openDiscordRoom(rules)
  const surface = room.surface()
  await surface.start()
  return { ...room, surface }
}

afterEach(async () => {
  const refused = room?.discord.refused
  await room?.close()
  room = undefined
  expect(refused ?? []).toEqual([])
})

const told = (asked: Asked, count = 1) =>
  vi.waitFor(() => expect(asked.told.length).toBeGreaterThanOrEqual(count), { timeout: 5000, interval: 5 })
const logs = (logged: () => string, words: string) =>
  vi.waitFor(() => expect(logged()).toContain(words), { timeout: 5000, interval: 5 })
const callback = (asked: Asked) => asked.told[0]?.body
/** The first line, without its verdict. */
const headline = (body: { embeds: { description: string }[] }) =>
  body.embeds[0]?.description.split('\n')[0]?.replace(/(?<=^\*\*)[A-Z]+ \S+ /, '')
const pack = { pack: '3S 720 LiHV' }

describe('login', () => {
  it('is ready after the gateway says so, and no longer after a stop', async () => {
    const { surface, discord } = await opened()
    expect(surface.ready()).toBe(true)
    expect(discord.gateway.sessions.identified).toBe(1)
    await surface.stop()
    expect(surface.ready()).toBe(false)
  })

  it('rejects with plain words, and without the token, where the token is wrong', async () => {
    room = await openDiscordRoom()
    const { createDiscordGateway } = await import('../../src/discord/gateway.ts')
    const surface = createDiscordGateway({ ...room.parts(), token: 'wrong.wrong.wrong-token-of-nobody-at-all' })
    await expect(surface.start()).rejects.toThrow(/^Discord does not let us in: (?!.*nobody)/)
  })

  it('only logs that the registered commands differ', async () => {
    const { discord, logged } = await opened()
    await logs(logged, 'npm run discord:register')
    expect(discord.commands.size).toBe(0)
  })
})

describe('a slash command', () => {
  it('is answered once, in public, with its cautions and buttons', async () => {
    const { discord } = await opened()
    const asked = discord.send(slash('bench', pack))
    await told(asked)
    const { type, data } = callback(asked)
    expect(type).toBe(4)
    expect(headline(data)).toBe('**Set 0.5\u00a0A for 3S 720 LiHV.**')
    expect(data.flags).toBeUndefined()
    expect(data.embeds[0].description).toContain('Use 4.35\u00a0V only for cells that say LiHV.')
    expect(
      data.components.flatMap((row: { components: { label: string }[] }) => row.components.map(b => b.label)),
    ).toEqual(['Why', 'Figures', 'Care', 'Ask more', 'One step up'])
  })

  it('is answered in private where the asker wants that, or has to mend the question', async () => {
    const { discord } = await opened()
    const hidden = discord.send(slash('bench', { ...pack, private: true }))
    const mistaken = discord.send(slash('bench', { pack: 'nonsense' }))
    await Promise.all([told(hidden), told(mistaken)])
    expect(callback(hidden).data.flags).toBe(64)
    expect(callback(mistaken).data.flags).toBe(64)
    expect(callback(mistaken).data.embeds[0].description).toContain('At "nonsense"')
  })

  it('is refused in private where the house keeps private answers to moderators', async () => {
    const { discord, memory } = await opened()
    await memory.house.change('discord:700000000000000003', [{ rule: 'privateAnswers', value: 'moderators' }])
    const pilots = discord.send(slash('bench', { ...pack, private: true }))
    const moderators = discord.send(slash('bench', { ...pack, private: true }, { permissions: moderatorPermissions }))
    await Promise.all([told(pilots), told(moderators)])
    expect(headline(callback(pilots).data)).toContain('only moderators')
    expect(headline(callback(moderators).data)).toContain('Set 0.5\u00a0A')
    expect([callback(pilots).data.flags, callback(moderators).data.flags]).toEqual([64, 64])
  })

  it('is as good as a direct message where only the asker sees the answer, which may bring a file', async () => {
    const { discord } = await opened({ commands: [trayExport] })
    const open = discord.send(slash('tray export'))
    const hidden = discord.send(slash('tray export', { private: true }))
    await Promise.all([told(open), told(hidden)])
    expect([open, hidden].map(asked => headline(callback(asked).data))).toEqual([
      '**Not in front of others.**',
      '**Here it is.**',
    ])
    expect(callback(hidden).data.attachments).toEqual([{ id: '0', filename: 'tray.json' }])
    expect(hidden.told[0]?.files.map(String)).toEqual(['{}'])
  })

  it('that changes something offers no button that would do it again', async () => {
    const { discord } = await opened()
    const asked = discord.send(slash('tray add', pack))
    await told(asked)
    expect(callback(asked).data.components).toHaveLength(1)
    expect(button(asked, 'One step up')).toBe('v2:brief:bench pack: 4S 850 LiHV')
  })

  it('knows subcommands, direct messages and moderators', async () => {
    const { discord } = await opened()
    const asPilot = discord.send(slash('tray add', pack))
    const asModerator = discord.send(slash('tray add', pack, { permissions: moderatorPermissions }))
    const direct = discord.send(slash('tray add', pack, { direct: true }))
    await Promise.all([asPilot, asModerator, direct].map(asked => told(asked)))
    const words = [asPilot, asModerator, direct].map(asked => headline(callback(asked).data)?.slice(2, 6))
    expect(words).toEqual(['Left', 'Put ', 'Put '])
  })
})

describe('autocomplete', () => {
  it('offers at most 25 values', async () => {
    const { discord } = await opened()
    const asked = discord.send(typing('bench', 'pack', '3'))
    await told(asked)
    expect(callback(asked).type).toBe(8)
    expect(callback(asked).data.choices).toHaveLength(25)
    expect(callback(asked).data.choices[0]).toEqual({ name: '30S 720 LiHV', value: '30S 720 LiHV' })
  })

  it('offers nothing for what it does not know, and for values too long to be chosen', async () => {
    const { discord } = await opened()
    const unknown = discord.send(typing('bench', 'colour', 'r'))
    const long = discord.send(typing('bench', 'pack', 'x'.repeat(100)))
    await Promise.all([told(unknown), told(long)])
    expect(callback(unknown).data.choices).toEqual([])
    expect(callback(long).data.choices).toEqual([])
  })
})

const button = (asked: Asked, label: string): string => buttonOf(callback(asked).data, label)

describe('a button', () => {
  it('answers whoever presses it in private, and leaves the public answer alone', async () => {
    const { discord } = await opened()
    const asked = discord.send(slash('bench', pack))
    await told(asked)
    const working = discord.send(press(button(asked, 'Why')))
    const whatIf = discord.send(press(button(asked, 'One step up')))
    await Promise.all([told(working), told(whatIf)])
    expect([callback(working).type, callback(working).data.flags]).toEqual([4, 64])
    expect(JSON.stringify(callback(working).data.embeds)).toContain('0.72\u00a0Ah × 1C')
    expect(headline(callback(whatIf).data)).toBe('**Set 0.5\u00a0A for 4S 850 LiHV.**')
    expect(asked.told).toHaveLength(1)
  })

  it('changes a message that only the presser sees', async () => {
    const { discord } = await opened()
    const asked = discord.send(slash('bench', pack))
    await told(asked)
    for (const alone of [{ ephemeral: true }, { direct: true }]) {
      const pressed = discord.send(press(button(asked, 'One step up'), alone))
      await told(pressed)
      expect(callback(pressed).type).toBe(7)
    }
    // What is opened of an answer stands beside it.
    const layer = discord.send(press(button(asked, 'Why'), { ephemeral: true }))
    await told(layer)
    expect([callback(layer).type, callback(layer).data.flags]).toEqual([4, 64])
  })

  it('works after a restart', async () => {
    const { discord, surface } = await opened()
    const asked = discord.send(slash('bench', pack))
    await told(asked)
    await surface.stop()
    await room?.surface().start()
    const pressed = discord.send(press(button(asked, 'One step up')))
    await told(pressed)
    expect(headline(callback(pressed).data)).toBe('**Set 0.5\u00a0A for 4S 850 LiHV.**')
  })

  it.each(['v1:brief:AAAAAAAAAAAAAAAA', 'v0:brief:AAAAAAAAAAAAAAAA', "v1:brief:' or 1=1 --    ", 'anything'])(
    'that we never gave is refused: %s',
    async customId => {
      const { discord } = await opened()
      const pressed = discord.send(press(customId, { ephemeral: true }))
      await told(pressed)
      expect([callback(pressed).type, callback(pressed).data.flags]).toEqual([4, 64])
      expect(headline(callback(pressed).data)).toContain('cannot find the question')
    },
  )
})

describe('a mention', () => {
  it('is answered by a reply that pings nobody', async () => {
    const { discord } = await opened()
    const said = message(`${mentionOfBot} bench pack: 3S 720 LiHV`)
    discord.gateway.dispatch('MESSAGE_CREATE', said)
    await vi.waitFor(() => expect(discord.messages).toHaveLength(1))
    const [sent] = discord.messages
    expect(sent?.channel).toBe(channelId)
    expect(sent?.body.message_reference.message_id).toBe(said.id)
    expect(sent?.body.allowed_mentions).toEqual({ parse: [], replied_user: false })
    expect(headline(sent?.body)).toBe('**Set 0.5\u00a0A for 3S 720 LiHV.**')
  })

  it('needs no name in a direct message, and knows moderators by their role', async () => {
    const { discord } = await opened()
    discord.gateway.dispatch('MESSAGE_CREATE', message('tray add pack: 3S 720 LiHV', { direct: true }))
    await vi.waitFor(() => expect(discord.messages).toHaveLength(1))
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} tray add pack: 1S`, { moderator: true }))
    await vi.waitFor(() => expect(discord.messages).toHaveLength(2))
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} tray add pack: 1S`))
    await vi.waitFor(() => expect(discord.messages).toHaveLength(3))
    expect(discord.messages.map(({ body }) => headline(body)?.slice(2, 6))).toEqual(['Put ', 'Put ', 'Left'])
  })

  it('is not taken from talk among people, bots, or ourselves', async () => {
    const { discord } = await opened()
    const other = { id: '700000000000000077', username: 'bot', discriminator: '0', avatar: null, bot: true }
    discord.gateway.dispatch('MESSAGE_CREATE', message('bench pack: 3S 720 LiHV'))
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 1S`, { author: other }))
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 2S 450 LiPo`))
    await vi.waitFor(() => expect(discord.messages).toHaveLength(1))
    expect(headline(discord.messages[0]?.body)).toContain('2S 450 LiPo')
  })

  it('is sent once though its request was tried twice', async () => {
    const { discord, memory } = await opened({ request_ms: 200 })
    discord.mishap(/^\/channels/, 'lost')
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 1S`))
    await vi.waitFor(async () => {
      const answer = `discord:${discord.messages[0]?.id}`
      expect(await memory.answered.byAnswer(answer)).toMatchObject({ question: 'bench pack: 1S' })
    })
    expect(discord.messages).toHaveLength(1)
  })

  it('that replies to an answer changes its question; other replies are left alone', async () => {
    const { discord, memory } = await opened()
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 1S`))
    const answer = () => discord.messages[0]?.id ?? ''
    await vi.waitFor(async () => expect(await memory.answered.byAnswer(`discord:${answer()}`)).toBeDefined())
    discord.gateway.dispatch('MESSAGE_CREATE', message('thank you all', { replyTo: answer() }))
    discord.gateway.dispatch('MESSAGE_CREATE', message('pack: 2S 450 LiPo', { replyTo: answer() }))
    await vi.waitFor(() => expect(discord.messages).toHaveLength(2))
    expect(headline(discord.messages[1]?.body)).toBe('**Set 0.5\u00a0A for 2S 450 LiPo.**')
  })
})

describe("Discord's rules", () => {
  it('an answer that takes long is promised, then given', async () => {
    const { command, open } = gatedCommand()
    const { discord } = await opened({ commands: [command], patience_ms: 20 })
    const asked = discord.send(slash('gated', pack))
    await told(asked)
    expect(callback(asked)).toEqual({ type: 5, data: {} })
    open()
    await told(asked, 2)
    expect(asked.told[1]?.what).toBe('edit')
    expect(headline(asked.told[1]?.body)).toContain('Set 0.5\u00a0A')
  })

  it("a promise in public about the asker's own mistake is taken back and kept in private", async () => {
    const { command, open } = gatedCommand()
    const { discord } = await opened({ commands: [command], patience_ms: 20 })
    const asked = discord.send(slash('gated', { pack: 'odd' }))
    await told(asked)
    open()
    await told(asked, 3)
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'removal', 'followUp'])
    expect(asked.told[2]?.body.flags).toBe(64)
  })

  it('an event that comes again after a reconnect is answered once', async () => {
    const { discord, surface } = await opened()
    const asked = discord.send(slash('bench', pack))
    const said = message(`${mentionOfBot} bench pack: 1S`)
    discord.gateway.dispatch('MESSAGE_CREATE', said)
    await told(asked)
    await vi.waitFor(() => expect(discord.messages).toHaveLength(1))
    discord.gateway.replay(2)
    discord.gateway.cut()
    await vi.waitFor(() => expect(discord.gateway.sessions.resumed).toBe(1), { timeout: 10_000 })
    const next = discord.send(slash('bench', { pack: '2S 450 LiPo' }))
    await told(next)
    await vi.waitFor(() => expect(surface.ready()).toBe(true))
    expect(discord.requests.filter(path => path.includes(asked.token))).toHaveLength(1)
    expect(discord.messages).toHaveLength(1)
  })

  it('an event sent while the connection was cut is answered after it is back', async () => {
    const { discord } = await opened()
    discord.gateway.cut()
    const asked = discord.send(slash('bench', pack))
    await vi.waitFor(() => expect(asked.told).toHaveLength(1), { timeout: 10_000 })
  })

  it.each([
    ['a rate limit', { status: 429, retryAfter_s: 0.05 }],
    ['a server fault', { status: 500 }],
  ] as const)('%s is tried again', async (_, mishap) => {
    const { discord } = await opened()
    discord.mishap(/callback$/, mishap)
    const asked = discord.send(slash('bench', pack))
    await told(asked)
    expect(asked.told).toHaveLength(1)
  })

  it('a callback whose response is lost counts as delivered when Discord says so', async () => {
    const { discord, surface, logged } = await opened({ request_ms: 100 })
    discord.mishap(/callback$/, 'lost')
    const asked = discord.send(slash('bench', pack))
    await told(asked)
    await surface.stop()
    expect(asked.told).toHaveLength(1)
    expect(logged()).not.toContain('not delivered')
  })

  it('a promise whose response is lost is still kept', async () => {
    const { command, open } = gatedCommand()
    const { discord } = await opened({ commands: [command], patience_ms: 20, request_ms: 100 })
    discord.mishap(/callback$/, 'lost')
    const asked = discord.send(slash('gated', pack))
    await told(asked)
    open()
    await told(asked, 2)
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
  })

  it('an interaction that expired is logged and left', async () => {
    const { discord, surface, logged } = await opened({ expiry_ms: 0 })
    const asked = discord.send(slash('bench', pack))
    await logs(logged, 'expired')
    await surface.stop()
    expect(asked.told).toEqual([])
  })

  it('a killed connection to the REST API costs no answer', async () => {
    const { discord } = await opened()
    discord.mishap(/callback$/, 'cut')
    discord.mishap(/^\/channels/, 'cut')
    const asked = discord.send(slash('bench', pack))
    discord.gateway.dispatch('MESSAGE_CREATE', message(`${mentionOfBot} bench pack: 1S`))
    await told(asked)
    await vi.waitFor(() => expect(discord.messages).toHaveLength(1))
    expect(asked.told).toHaveLength(1)
  })
})

describe('stop', () => {
  it('finishes the answers in flight and takes no more', async () => {
    const { command, open } = gatedCommand()
    const { discord, surface } = await opened({ commands: [command], patience_ms: 20 })
    const asked = discord.send(slash('gated', pack))
    await told(asked)
    setTimeout(open, 100)
    await surface.stop()
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
  })
})

describe('the log', () => {
  it('never holds a token, though errors of HTTP clients do', async () => {
    const { discord, surface, logged, memory } = await opened()
    memory.questions.keepAll = () => Promise.reject(leakyError('a-secret-token'))
    discord.mishap(/callback$/, { status: 403 })
    const asked = discord.send(slash('bench', { pack: `3S 720 LiHV${' of the club'.repeat(9)}` }))
    await logs(logged, 'without its buttons')
    await logs(logged, 'not delivered')
    await surface.stop()
    expect(logged()).not.toContain('a-secret-token')
    expect(logged()).not.toContain(asked.token)
    expect(logged()).not.toContain(discord.token)
  })
})
