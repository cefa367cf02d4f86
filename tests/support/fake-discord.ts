// Discord on loopback: the part of its REST API and gateway that we use, with its rules, and nothing else.

import { createServer, type IncomingMessage, type ServerResponse } from 'node:http'
import type { AddressInfo } from 'node:net'
import { type Answered, type Arrived, type Channels, createChannels } from './discord-channels.ts'
import { application, botId, type Interaction, newId, serverEvent } from './discord-events.ts'
import { callbackFaults, faultsOf, type PayloadKind, registrationFaults } from './discord-payload.ts'
import { mayBot } from './discord-permissions.ts'
import { pageOfServers, serverEventOf, serverIds } from './discord-servers.ts'
import { type FakeGateway, fakeGateway, type GatewayEvent, type Shard, shardOf } from './fake-gateway.ts'

// biome-ignore lint/suspicious/noExplicitAny: bodies are judged by the payload checks.
type Json = any

/** What goes wrong with a request: `lost` is carried out, but its response never comes; nothing is heard of a `silent` one. */
export type Mishap = { status: 429; retryAfter_s: number } | { status: 403 | 500 | 502 } | 'lost' | 'cut' | 'silent'

/** An interaction as Discord sees it, and what became of it. */
export interface Asked {
  readonly token: string
  readonly type: unknown
  readonly sentAt: number
  /** Of the message that answers it. */
  readonly message: string
  acknowledged: boolean
  /** Everything we were told, in order: what it was and its body. */
  readonly told: (Arrived & { readonly what: 'callback' | 'edit' | 'followUp' | 'removal' })[]
  readonly acknowledgement: Promise<Arrived>
}

export interface FakeDiscord extends Pick<Channels, 'messages' | 'others' | 'denied'> {
  readonly api: string
  readonly token: string
  readonly gateway: FakeGateway
  /** Requests that are no part of Discord, or that broke its rules. */
  readonly refused: string[]
  /** Every request, as method and path. */
  readonly requests: string[]
  /** Registered commands: by "global" or a server's id. */
  readonly commands: Map<string, Json[]>
  /** Sends an interaction over the gateway. */
  send(interaction: Interaction): Asked
  /** Knows an interaction that is sent by other ways. */
  expect(interaction: Interaction): Asked
  /** Of the next `times` requests there; of one when absent. */
  mishap(path: RegExp, mishap: Mishap, times?: number): void
  close(): Promise<void>
}

export interface FakeRules {
  /** How long an interaction waits for its acknowledgement: Discord's three seconds when absent. */
  readonly expiry_ms?: number
  /** Whether payloads are judged; a bench leaves that out, as it costs more than what it measures. */
  readonly judging?: boolean
  /** How many servers the bot is in: the one of the tests, and others like it. */
  readonly servers?: number
  readonly heartbeat_ms?: number
}

const token = 'fake.bot.token-that-must-never-show-up-in-a-log'

export async function startFakeDiscord(rules: FakeRules = {}): Promise<FakeDiscord> {
  const { expiry_ms = 3000, judging = true, servers = 1, heartbeat_ms } = rules
  const asked = new Map<string, Asked>()
  const acknowledged = new Map<Asked, (by: Arrived) => void>()
  const commands = new Map<string, Json[]>()
  const refused: string[] = []
  const requests: string[] = []
  const mishaps: { path: RegExp; mishap: Mishap }[] = []

  const channels = createChannels({ server: serverEvent.id, isChannel: () => true, may: mayBot, refuse, judging })

  const server = createServer((request, response) => {
    handle(request, response).catch(error => {
      refused.push(String(error))
      response.destroy()
    })
  })
  await new Promise<void>(resolve => server.listen(0, '127.0.0.1', resolve))
  const port = (server.address() as AddressInfo).port
  const gatewayUrl = `ws://127.0.0.1:${port}/gateway`
  const gateway = fakeGateway(server, {
    url: gatewayUrl,
    token,
    greet: shard => greeting(gatewayUrl, shard, servers),
    servers,
    heartbeat_ms,
  })

  async function handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const path = (request.url ?? '').replace(/\?.*/, '').replace('/api/v10', '')
    const at = performance.now()
    const arrived = { at, ...(await readBody(request)) }
    requests.push(`${request.method} ${path}`)
    const index = mishaps.findIndex(planned => planned.path.test(path))
    const mishap = index < 0 ? undefined : mishaps.splice(index, 1)[0]?.mishap
    if (mishap === 'cut') return void response.destroy()
    if (mishap === 'silent') return
    if (typeof mishap === 'object') return answerMishap(response, mishap)
    const [status, answer] = route(`${request.method} ${path}`, request, arrived)
    if (mishap === 'lost') return
    if (answer === undefined) return void response.writeHead(status).end()
    response.writeHead(status, { 'content-type': 'application/json' })
    response.end(JSON.stringify(answer))
  }

  function route(what: string, request: IncomingMessage, arrived: Arrived): Answered {
    const match = (pattern: RegExp) => pattern.exec(what)?.slice(1) as string[] | undefined
    const callback = match(/^POST \/interactions\/(\d+)\/([^/]+)\/callback$/)
    if (callback) return acknowledge(callback[0] ?? '', callback[1] ?? '', arrived)
    const original = match(/^(GET|PATCH|DELETE) \/webhooks\/\d+\/([^/]+)\/messages\/(?:@|%40)original$/)
    if (original) return change(original[0] ?? '', original[1] ?? '', arrived)
    const further = match(/^POST \/webhooks\/\d+\/([^/]+)$/)
    if (further) return followUp(further[0] ?? '', arrived)

    if (request.headers.authorization !== `Bot ${token}`) return [401, { code: 0, message: '401: Unauthorized' }]
    if (what === 'GET /gateway/bot') return [200, gatewayInformation(gatewayUrl, servers)]
    if (what === 'GET /applications/@me') return [200, application]
    if (what === `GET /guilds/${serverEvent.id}`) return [200, serverEvent]
    if (what === 'GET /users/@me/guilds') return [200, pageOfServers(request.url ?? '', servers)]
    const scope = match(/^(GET|PUT) \/applications\/\d+(?:\/guilds\/(\d+))?\/commands$/)
    if (scope) return registered(scope[0] ?? '', scope[1] ?? 'global', arrived)
    return channels.route(what, arrived) ?? refuse(404, 0, `unknown route: ${what}`)
  }

  function refuse(status: number, code: number, message: string): [number, Json] {
    refused.push(message)
    return [status, { code, message }]
  }

  function judged(kind: PayloadKind, body: Json): [number, Json] | undefined {
    const faults = faultsOf(kind, body)
    return faults.length > 0 ? refuse(400, 50035, `Invalid Form Body: ${faults.join('; ')}`) : undefined
  }

  /**
   * Within three seconds: https://docs.discord.com/developers/interactions/receiving-and-responding#interaction-callback
   * The codes here and below: https://docs.discord.com/developers/topics/opcodes-and-status-codes#json
   */
  function acknowledge(id: string, given: string, arrived: Arrived): [number, Json?] {
    const one = asked.get(id)
    if (one?.token !== given || performance.now() - one.sentAt > expiry_ms)
      return [404, { code: 10062, message: 'Unknown interaction' }]
    if (one.acknowledged) return [400, { code: 40060, message: 'Interaction has already been acknowledged.' }]
    const faults = judging ? callbackFaults(arrived.body, one.type) : []
    if (faults.length > 0) return refuse(400, 50035, `Invalid Form Body: ${faults.join('; ')}`)
    one.acknowledged = true
    acknowledged.get(one)?.(arrived)
    one.told.push({ what: 'callback', ...arrived })
    return [204]
  }

  const holder = (given: string) => [...asked.values()].find(one => one.token === given && one.acknowledged)

  function change(method: string, given: string, arrived: Arrived): [number, Json?] {
    const one = holder(given)
    if (method === 'GET') return original(one)
    if (!one) return refuse(404, 10015, 'Unknown Webhook')
    if (one.told.some(({ what }) => what === 'removal')) {
      // What was heard of only by Discord is taken away again.
      if (method === 'DELETE') return [404, { code: 10008, message: 'Unknown Message' }]
      return refuse(404, 10008, 'Unknown Message')
    }
    const fault = method === 'PATCH' ? judged('edit', arrived.body) : undefined
    if (fault) return fault
    one.told.push({ what: method === 'PATCH' ? 'edit' : 'removal', ...arrived })
    return method === 'PATCH' ? [200, { id: one.message }] : [204]
  }

  /** https://docs.discord.com/developers/interactions/receiving-and-responding#get-original-interaction-response */
  function original(one: Asked | undefined): [number, Json] {
    if (!one) return [404, { code: 10015, message: 'Unknown Webhook' }]
    if (one.told.some(({ what }) => what === 'removal')) return [404, { code: 10008, message: 'Unknown Message' }]
    return [200, { id: one.message, flags: one.told[0]?.body.data?.flags ?? 0 }]
  }

  function followUp(given: string, arrived: Arrived): [number, Json?] {
    const one = holder(given)
    if (!one) return refuse(404, 10015, 'Unknown Webhook')
    const fault = judged('followUp', arrived.body)
    if (fault) return fault
    one.told.push({ what: 'followUp', ...arrived })
    return [200, { id: newId() }]
  }

  function registered(method: string, scope: string, { body }: Arrived): [number, Json] {
    if (method === 'GET') return [200, commands.get(scope) ?? []]
    const faults = registrationFaults(body)
    if (faults.length > 0) return refuse(400, 50035, `Invalid Form Body: ${faults.join('; ')}`)
    commands.set(scope, body)
    return [200, body]
  }

  function expect(interaction: Interaction): Asked {
    const { promise: acknowledgement, resolve } = Promise.withResolvers<Arrived>()
    const { token, type } = interaction
    const sentAt = performance.now()
    const one: Asked = { token, type, sentAt, message: newId(), acknowledged: false, told: [], acknowledgement }
    acknowledged.set(one, resolve)
    asked.set(interaction.id, one)
    return one
  }

  return {
    api: `http://127.0.0.1:${port}/api`,
    token,
    gateway,
    refused,
    requests,
    messages: channels.messages,
    others: channels.others,
    denied: channels.denied,
    commands,
    expect,
    send: interaction => {
      const one = expect(interaction)
      gateway.dispatch('INTERACTION_CREATE', interaction)
      return one
    },
    mishap: (path, mishap, times = 1) => void mishaps.push(...Array(times).fill({ path, mishap })),
    close: async () => {
      await gateway.close()
      server.closeAllConnections()
      await new Promise(resolve => server.close(resolve))
    },
  }
}

function answerMishap(response: ServerResponse, mishap: Exclude<Mishap, string>): void {
  if (mishap.status === 429) {
    response.writeHead(429, { 'content-type': 'application/json', 'retry-after': String(mishap.retryAfter_s) })
    response.end(JSON.stringify({ message: 'You are being rate limited.', retry_after: mishap.retryAfter_s }))
  } else {
    response.writeHead(mishap.status).end()
  }
}

async function readBody(request: IncomingMessage): Promise<{ body: Json; files: readonly Buffer[] }> {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk)
  const raw = Buffer.concat(chunks)
  const type = request.headers['content-type'] ?? ''
  if (raw.length === 0) return { body: undefined, files: [] }
  if (!type.startsWith('multipart/')) return { body: JSON.parse(raw.toString()), files: [] }
  const form = await new Response(raw, { headers: { 'content-type': type } }).formData()
  const parts = [...form].filter(([key]) => key.startsWith('files[')).map(([, part]) => part as File)
  const files = await Promise.all(parts.map(async part => Buffer.from(await part.arrayBuffer())))
  return { body: JSON.parse(String(form.get('payload_json'))), files }
}

function* greeting(url: string, shard: Shard, servers: number): Iterable<GatewayEvent> {
  const mine = serverIds(servers).filter(id => shardOf(id, shard[1]) === shard[0])
  yield { event: 'READY', data: ready(url, shard, mine) }
  for (const id of mine)
    yield {
      event: 'GUILD_CREATE',
      get data() {
        return serverEventOf(id)
      },
    }
}

const ready = (url: string, shard: Shard, servers: readonly string[]) => ({
  v: 10,
  user: { id: botId, username: 'chargehand', discriminator: '0', global_name: null, avatar: null, bot: true },
  guilds: servers.map(id => ({ id, unavailable: true })),
  session_id: `session ${shard[0]}`,
  resume_gateway_url: url,
  shard,
  application: { id: application.id, flags: 0 },
})

const gatewayInformation = (url: string, servers: number) => ({
  url,
  shards: Math.ceil(servers / 1000),
  session_start_limit: { total: 1000, remaining: 999, reset_after: 0, max_concurrency: 16 },
})
