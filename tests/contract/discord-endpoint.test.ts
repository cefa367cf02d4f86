// Discord's interactions by HTTP: signed requests in, answers out, everything else refused.

import { generateKeyPairSync } from 'node:crypto'
import { afterEach, describe, expect, it, vi } from 'vitest'
import { createDiscordEndpoint } from '../../src/discord/endpoint.ts'
import { english } from '../../src/ground/locale.ts'
import { createHttpServer, type HttpServer } from '../../src/http/server.ts'
import { gatedCommand } from '../support/discord-commands.ts'
import { type Interaction, newId, press, slash, typing } from '../support/discord-events.ts'
import { callbackFaults } from '../support/discord-payload.ts'
import { type DiscordRoom, keptLog, openDiscordRoom, picture } from '../support/discord-room.ts'
import { publicHex, signed as signedAt } from '../support/discord-signature.ts'

const now = new Date('2026-06-01T12:00:00Z')
const nowSeconds = String(now.getTime() / 1000)

let room: DiscordRoom | undefined
let server: HttpServer | undefined

const { own } = english('.')

async function opened(rules: Parameters<typeof openDiscordRoom>[0] & { charts?: boolean } = {}) {
  room = await openDiscordRoom(rules)
  const { assistant } = room
  // A chart on every answer, where the test wants pictures.
  const charted: typeof assistant = {
    ...assistant,
    answer: async (question, occasion) => ({
      ...(await assistant.answer(question, occasion)),
      charts: [{ kind: 'timeline', title: own(''), xLabel: own(''), rows: [], bars: [], alternative: own('one bar') }],
    }),
  }
  const endpoint = createDiscordEndpoint({
    ...room.parts(),
    assistant: rules.charts ? charted : assistant,
    publicKey: publicHex,
    clock: () => now,
  })
  await endpoint.start()
  server = createHttpServer({ host: '127.0.0.1', port: 0 }, [endpoint.route], keptLog().log)
  const url = `http://127.0.0.1:${await server.start()}/discord/interactions`
  const post = (body: string, headers: Record<string, string>) => fetch(url, { method: 'POST', body, headers })
  const ask = (interaction: object) => {
    const body = JSON.stringify(interaction)
    return post(body, signed(body))
  }
  return { ...room, endpoint, post, ask, url }
}

const signed: typeof signedAt = (body, { timestamp = nowSeconds, ...more } = {}) =>
  signedAt(body, { timestamp, ...more })

afterEach(async () => {
  const refused = room?.discord.refused
  await server?.stop()
  await room?.close()
  server = undefined
  room = undefined
  expect(refused ?? []).toEqual([])
})

const ping = JSON.stringify({ id: newId(), type: 1, application_id: newId(), token: 't', version: 1 })
const pack = { pack: '3S 720 LiHV' }

describe('the signature', () => {
  it('lets a PING pass', async () => {
    const { post } = await opened()
    const response = await post(ping, signed(ping))
    expect([response.status, await response.json()]).toEqual([200, { type: 1 }])
  })

  const other = generateKeyPairSync('ed25519').privateKey
  const minutesAway = (minutes: number) => String(Number(nowSeconds) + minutes * 60)
  it.each([
    ['is missing', {}],
    ['lacks its timestamp', { 'x-signature-ed25519': signed(ping)['x-signature-ed25519'] }],
    ['is no signature', { ...signed(ping), 'x-signature-ed25519': 'zz' }],
    ['is of another body', signed(`${ping} `)],
    ['is of another key', signed(ping, { key: other })],
    ['is of another time', { ...signed(ping), 'x-signature-timestamp': String(Number(nowSeconds) - 1) }],
    ['is two minutes old', signed(ping, { timestamp: minutesAway(-2) })],
    ['is of the future', signed(ping, { timestamp: minutesAway(2) })],
    ['has a timestamp that is no number', signed(ping, { timestamp: 'NaN' })],
  ])('is refused where it %s', async (_, headers) => {
    const { post } = await opened()
    expect((await post(ping, headers)).status).toBe(401)
  })

  it('is of the raw body: the same JSON written otherwise does not pass', async () => {
    const { post } = await opened()
    const spaced = JSON.stringify(JSON.parse(ping), null, 1)
    expect((await post(spaced, signed(ping))).status).toBe(401)
    expect((await post(spaced, signed(spaced))).status).toBe(200)
  })

  it('does not make a request good for a second time', async () => {
    const { post } = await opened()
    const body = JSON.stringify(slash('bench', pack))
    expect((await post(body, signed(body))).status).toBe(200)
    expect((await post(body, signed(body))).status).toBe(409)
  })
})

describe('an interaction', () => {
  it('is answered in the response', async () => {
    const { ask } = await opened()
    const answers = await Promise.all(
      [slash('bench', pack), typing('bench', 'pack', '3'), press('v1:brief:AAAAAAAAAAAAAAAA')].map(
        // biome-ignore lint/suspicious/noExplicitAny: the payload checks judge it.
        async interaction => (await ask(interaction)).json() as any,
      ),
    )
    expect(answers.flatMap(answer => callbackFaults(answer))).toEqual([])
    expect(answers.map(({ type }) => type)).toEqual([4, 8, 4])
    expect(answers[0].data.embeds[0].description).toContain('Set 0.5\u00a0A for 3S 720 LiHV.**')
  })

  it('that takes long is promised by REST, then answered', async () => {
    const { command, open } = gatedCommand()
    const { ask, discord } = await opened({ commands: [command], patience_ms: 20 })
    const interaction = slash('gated', pack)
    const asked = discord.expect(interaction)
    const response = await ask(interaction)
    expect([response.status, await response.text()]).toEqual([202, ''])
    open()
    await vi.waitFor(() => expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit']))
  })

  it('whose answer has a picture is answered by REST', async () => {
    const { ask, discord } = await opened({ charts: true })
    const interaction = slash('bench', pack)
    const asked = discord.expect(interaction)
    expect((await ask(interaction)).status).toBe(202)
    await vi.waitFor(() => expect(asked.told).toHaveLength(1))
    expect(asked.told[0]?.body.data.attachments).toEqual([{ id: '0', filename: 'chart-1.png', description: 'one bar' }])
    expect(asked.told[0]?.files).toEqual([Buffer.from(picture)])
  })

  it('of no known kind, or without an asker, gets no answer but no crash either', async () => {
    const { ask } = await opened()
    const strange = [
      { ...slash('bench', pack), type: 77 },
      { id: newId(), type: 2 },
    ] as Interaction[]
    for (const interaction of strange) expect((await ask(interaction)).status).toBe(500)
    expect((await ask([])).status).toBe(400)
    expect((await ask(slash('bench', pack))).status).toBe(200)
  })
})

describe('the server', () => {
  it('answers in flight before it stops, and takes nothing more', async () => {
    const { command, open } = gatedCommand()
    const { ask, discord, endpoint } = await opened({ commands: [command], patience_ms: 20 })
    const interaction = slash('gated', pack)
    const asked = discord.expect(interaction)
    await ask(interaction)
    const stopping = endpoint.stop()
    expect((await ask(slash('bench', pack))).status).toBe(503)
    open()
    await stopping
    expect(asked.told.map(({ what }) => what)).toEqual(['callback', 'edit'])
  })

  it('refuses what is too long, elsewhere, or another method', async () => {
    const { post, url } = await opened()
    expect((await post('x'.repeat(300_000), {})).status).toBe(413)
    expect((await fetch(url)).status).toBe(405)
    expect((await fetch(`${url}/more`)).status).toBe(404)
  })
})
