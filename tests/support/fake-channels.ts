// Discord's channels on loopback, for what speaks first there.

import { createServer } from 'node:http'
import type { AddressInfo } from 'node:net'
import { type Answered, type Channels, createChannels } from './discord-channels.ts'

export interface FakeChannels extends Pick<Channels, 'messages' | 'others' | 'denied'> {
  readonly api: string
  readonly token: string
  /** Requests that are no part of Discord, or that broke its rules. */
  readonly refused: string[]
  close(): Promise<void>
}

/** One server with these channels. */
export async function startFakeChannels(server: string, channels: readonly string[]): Promise<FakeChannels> {
  const token = 'fake.bot.token'
  const refused: string[] = []
  const refuse = (status: number, code: number, message: string): [number, object] => {
    refused.push(message)
    return [status, { code, message }]
  }
  const { messages, others, denied, route } = createChannels({ server, isChannel: id => channels.includes(id), refuse })

  const http = createServer(async (request, response) => {
    const path = (request.url ?? '').replace('/api/v10', '')
    const what = `${request.method} ${path}`
    const chunks: Buffer[] = []
    for await (const chunk of request) chunks.push(chunk)
    const text = Buffer.concat(chunks).toString()
    const arrived = { body: text === '' ? undefined : JSON.parse(text), files: [], at: performance.now() }
    const [status, answer] =
      tooLate(what) ??
      (request.headers.authorization === `Bot ${token}` ? undefined : refuse(401, 0, '401: Unauthorized')) ??
      route(what, arrived) ??
      refuse(400, 0, `unknown route: ${what}`)
    if (answer === undefined) return void response.writeHead(status).end()
    response.writeHead(status, { 'content-type': 'application/json' }).end(JSON.stringify(answer))
  })
  await new Promise<void>(resolve => http.listen(0, '127.0.0.1', resolve))

  return {
    api: `http://127.0.0.1:${(http.address() as AddressInfo).port}/api`,
    token,
    messages,
    others,
    refused,
    denied,
    close: () =>
      new Promise(resolve => {
        http.closeAllConnections()
        http.close(() => resolve())
      }),
  }
}

/** It asked nothing: whoever answers an interaction here comes too late, as after three seconds. These need no token. */
function tooLate(what: string): Answered | undefined {
  if (/^POST \/interactions\/\d+\/[^/]+\/callback$/.test(what))
    return [404, { code: 10062, message: 'Unknown interaction' }]
  if (/^(?:GET|PATCH) \/webhooks\/\d+\/[^/]+\/messages\/(?:@|%40)original$/.test(what))
    return [404, { code: 10015, message: 'Unknown Webhook' }]
  return undefined
}
