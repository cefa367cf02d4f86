// Signed interactions by the thousand, and a client for them that costs less than any server: bytes made beforehand, one
// request at a time on each connection.

import { connect } from 'node:net'
import { type Interaction, newId } from '../discord-events.ts'
import { signed } from '../discord-signature.ts'

export function signedRequest(interaction: Interaction): Buffer {
  const body = JSON.stringify(interaction)
  const head = [
    'POST /discord/interactions HTTP/1.1',
    'host: here',
    'content-type: application/json',
    `content-length: ${Buffer.byteLength(body)}`,
    ...Object.entries(signed(body)).map(([name, value]) => `${name}: ${value}`),
  ]
  return Buffer.from(`${head.join('\r\n')}\r\n\r\n${body}`)
}

/** The same question of somebody else, elsewhere: a club has 100 members here. */
export function askedBy(interaction: Interaction, member: number): Interaction {
  const { member: before, ...rest } = interaction as Interaction & { member: { user: object } }
  const id = (kind: number, number: number) => String(600000000000000000n + BigInt(kind) * 1000000n + BigInt(number))
  const channel = { id: id(2, Math.floor(member / 100)), type: 0 }
  return {
    ...rest,
    id: newId(),
    guild_id: id(1, Math.floor(member / 100)),
    channel,
    channel_id: channel.id,
    member: { ...before, user: { ...before.user, id: id(3, member) } },
  }
}

export interface Answered {
  /** Which of the requests it answers. */
  readonly at: number
  readonly status: number
  readonly body: string
  readonly took_ms: number
}

/** One connection; requests one after the other. */
function connection(port: number) {
  const socket = connect(port, '127.0.0.1').setNoDelay(true)
  let heard = Buffer.alloc(0)
  let waiting:
    | { at: number; since: number; done: (answered: Answered) => void; failed: (error: Error) => void }
    | undefined
  socket.on('error', error => waiting?.failed(error))
  socket.on('close', () => waiting?.failed(new Error('the connection was closed')))
  socket.on('data', chunk => {
    heard = heard.length === 0 ? chunk : Buffer.concat([heard, chunk])
    const headEnd = heard.indexOf('\r\n\r\n')
    if (headEnd < 0) return
    const head = heard.toString('latin1', 0, headEnd)
    const isChunked = /transfer-encoding: chunked/i.test(head)
    const length = Number(/content-length: (\d+)/i.exec(head)?.[1] ?? 0)
    const end = isChunked ? heard.indexOf('0\r\n\r\n', headEnd) + 5 : headEnd + 4 + length
    if (end < headEnd + 4 || heard.length < end) return
    const body = heard.toString('utf8', headEnd + 4, end)
    const { at, since, done } = waiting ?? { at: 0, since: 0, done: () => {} }
    heard = heard.subarray(end)
    waiting = undefined
    done({ at, status: Number(head.slice(9, 12)), body, took_ms: performance.now() - since })
  })
  return {
    send: (request: Buffer, at: number, since = performance.now()) =>
      new Promise<Answered>((done, failed) => {
        waiting = { at, since, done, failed }
        socket.write(request)
      }),
    close: () => socket.destroy(),
  }
}

/** All of them, `atOnce` under way at any time, as fast as they are answered. */
export async function pump(port: number, requests: readonly Buffer[], atOnce: number): Promise<readonly Answered[]> {
  const queue = requests.entries()
  const answers: Answered[] = []
  const worker = async () => {
    const { send, close } = connection(port)
    for (const [at, request] of queue) answers.push(await send(request, at))
    close()
  }
  await Promise.all(Array.from({ length: atOnce }, worker))
  return answers
}

/** At a steady pace, whatever the answers take: what waits for a connection waits on the clock. */
export async function paced(
  port: number,
  requests: readonly Buffer[],
  perSecond: number,
  atOnce: number,
): Promise<readonly Answered[]> {
  const start = performance.now()
  const answers: Answered[] = []
  let next = 0
  const worker = async () => {
    const { send, close } = connection(port)
    for (;;) {
      const at = next
      next += 1
      const request = requests[at]
      if (!request) break
      const due = start + (at * 1000) / perSecond
      const ahead = due - performance.now()
      if (ahead > 1) await new Promise(resolve => setTimeout(resolve, ahead))
      answers.push(await send(request, at, due))
    }
    close()
  }
  await Promise.all(Array.from({ length: atOnce }, worker))
  return answers
}
