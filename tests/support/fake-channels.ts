// Discord's channels on loopback: messages, pins and direct messages by REST, with their rules and nothing else.

import { createServer, type IncomingMessage } from 'node:http'
import type { AddressInfo } from 'node:net'
import { faultsOf } from './discord-payload.ts'

// biome-ignore lint/suspicious/noExplicitAny: bodies are judged by the payload checks.
type Json = any

export interface FakeMessage {
  readonly id: string
  readonly channel: string
  body: Json
  pinned: boolean
}

export interface FakeChannels {
  readonly api: string
  readonly token: string
  readonly messages: FakeMessage[]
  /** Requests that are no part of Discord, or that broke its rules. */
  readonly refused: string[]
  /** The code with which a kind of request is refused, as Discord's `code` in a 403. */
  readonly denied: { see?: number; write?: number; pin?: number; direct?: number }
  close(): Promise<void>
}

/** One server with these channels; everybody's direct channel has their id with a 9 before it. */
export async function startFakeChannels(server: string, channels: readonly string[]): Promise<FakeChannels> {
  const token = 'fake.bot.token'
  const messages: FakeMessage[] = []
  const refused: string[] = []
  const denied: FakeChannels['denied'] = {}
  const direct = new Set<string>()
  const nonces = new Map<string, Json>()

  const http = createServer(async (request, response) => {
    const path = (request.url ?? '').replace('/api/v10', '')
    const [status, answer] = route(`${request.method} ${path}`, request, await jsonOf(request))
    if (answer === undefined) return void response.writeHead(status).end()
    response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(answer))
  })
  await new Promise<void>(resolve => http.listen(0, '127.0.0.1', resolve))

  function refuse(status: number, code: number, message: string): [number, Json] {
    if (status !== 403 && status !== 404) refused.push(message)
    return [status, { code, message }]
  }

  function route(what: string, request: IncomingMessage, body: Json): [number, Json?] {
    const match = (pattern: RegExp) => pattern.exec(what)?.slice(1)
    // It asked nothing: whoever answers an interaction here comes too late, as after three seconds. These need no token.
    if (match(/^POST \/interactions\/\d+\/[^/]+\/callback$/)) return refuse(404, 10062, 'Unknown interaction')
    if (match(/^PATCH \/webhooks\/\d+\/[^/]+\/messages\/@original$/)) return refuse(404, 10015, 'Unknown Webhook')
    if (request.headers.authorization !== `Bot ${token}`) return refuse(401, 0, '401: Unauthorized')
    if (what === 'POST /users/@me/channels') {
      const id = `9${body.recipient_id}`
      direct.add(id)
      return [200, { id, type: 1 }]
    }
    const [channel] = match(/^[A-Z]+ \/channels\/(\d+)/) ?? []
    if (channel === undefined) return refuse(400, 0, `unknown route: ${what}`)
    const isDirect = direct.has(channel)
    if (!isDirect && !channels.includes(channel)) return refuse(404, 10003, 'Unknown Channel')
    if (denied.see && !isDirect) return refuse(403, denied.see, 'Missing Access')
    if (what === `GET /channels/${channel}`)
      return [200, isDirect ? { id: channel, type: 1 } : { id: channel, type: 0, guild_id: server }]
    if (what === `POST /channels/${channel}/messages`) return post(channel, isDirect, body)

    const [method, id] = match(/^([A-Z]+) \/channels\/\d+\/messages\/(?:pins\/)?(\d+)$/) ?? []
    const message = messages.find(one => one.id === id && one.channel === channel)
    if (method === undefined) return refuse(400, 0, `unknown route: ${what}`)
    if (!message) return refuse(404, 10008, 'Unknown Message')
    if (what.includes('/pins/')) {
      if (method !== 'PUT') return refuse(400, 0, `unknown route: ${what}`)
      if (denied.pin) return refuse(403, denied.pin, 'Missing Permissions')
      message.pinned = true
      return [204]
    }
    if (method === 'DELETE') {
      messages.splice(messages.indexOf(message), 1)
      return [204]
    }
    if (method !== 'PATCH') return refuse(400, 0, `unknown route: ${what}`)
    const faults = faultsOf('edit', body)
    if (faults.length > 0) return refuse(400, 50035, faults.join('; '))
    message.body = body
    return [200, { id }]
  }

  function post(channel: string, isDirect: boolean, body: Json): [number, Json] {
    const code = isDirect ? denied.direct : denied.write
    if (code) return refuse(403, code, 'Missing Permissions')
    const faults = faultsOf('message', body)
    if (typeof body.nonce !== 'string' || body.nonce.length > 25) faults.push('nonce: at most 25 characters')
    if (faults.length > 0) return refuse(400, 50035, faults.join('; '))
    const earlier = nonces.get(body.nonce)
    if (earlier) return [200, earlier]
    const message = { id: String(10n ** 17n + BigInt(messages.length)), channel, body, pinned: false }
    messages.push(message)
    const answer = { id: message.id, channel_id: channel }
    nonces.set(body.nonce, answer)
    return [200, answer]
  }

  return {
    api: `http://127.0.0.1:${(http.address() as AddressInfo).port}/api`,
    token,
    messages,
    refused,
    denied,
    close: () =>
      new Promise(resolve => {
        http.closeAllConnections()
        http.close(() => resolve())
      }),
  }
}

async function jsonOf(request: IncomingMessage): Promise<Json> {
  const chunks: Buffer[] = []
  for await (const chunk of request) chunks.push(chunk)
  const text = Buffer.concat(chunks).toString()
  return text === '' ? undefined : JSON.parse(text)
}
