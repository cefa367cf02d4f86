// Discord's gateway as far as a bot needs it: hello, identify, ready, heartbeat, events, resume.

import type { Server } from 'node:http'
import { type WebSocket, WebSocketServer } from 'ws'

/** https://docs.discord.com/developers/topics/opcodes-and-status-codes#gateway */
const op = { dispatch: 0, heartbeat: 1, identify: 2, resume: 6, hello: 10, heartbeatAck: 11 } as const
const authenticationFailed = 4004
const disallowedIntents = 4014
/** Guild members, presences and message content need Discord's approval: the fake application has none. */
const privilegedIntents = (1 << 1) | (1 << 8) | (1 << 15)

interface Packet {
  readonly op: number
  readonly t?: string
  readonly s?: number
  readonly d: unknown
}

export interface FakeGateway {
  readonly url: string
  readonly sessions: { readonly identified: number; readonly resumed: number }
  /** Sends an event to whoever is connected; kept for a resume. */
  dispatch(event: string, data: unknown): void
  /** Kills the connection without a word, as a cable pulled out does. */
  cut(): void
  /** Closes it with one of Discord's codes. */
  closeWith(code: number): void
  /** At the next resume, sends the last `count` events again, though they were sent before. */
  replay(count: number): void
  close(): Promise<void>
}

export function fakeGateway(
  server: Server,
  url: string,
  token: string,
  greet: readonly { event: string; data: unknown }[],
): FakeGateway {
  const sockets = new WebSocketServer({ server })
  const sessions = { identified: 0, resumed: 0 }
  const sent: Packet[] = []
  let connected: WebSocket | undefined
  let replayed = 0

  const send = (socket: WebSocket, packet: Packet) => socket.send(JSON.stringify(packet))
  const dispatch = (event: string, data: unknown) => {
    const packet = { op: op.dispatch, t: event, s: sent.length + 1, d: data }
    sent.push(packet)
    if (connected?.readyState === connected?.OPEN && connected) send(connected, packet)
  }

  sockets.on('connection', socket => {
    send(socket, { op: op.hello, d: { heartbeat_interval: 45_000 } })
    socket.on('message', raw => {
      const packet = JSON.parse(raw.toString())
      if (packet.op === op.heartbeat) send(socket, { op: op.heartbeatAck, d: null })
      else if (packet.op === op.identify) identify(socket, packet.d)
      else if (packet.op === op.resume) resume(socket, packet.d.seq)
    })
  })

  function identify(socket: WebSocket, { token: given, intents }: { token: string; intents: number }) {
    if (given !== token) return socket.close(authenticationFailed, 'Authentication failed.')
    if ((intents & privilegedIntents) !== 0) return socket.close(disallowedIntents, 'Disallowed intent(s).')
    sessions.identified += 1
    connected = socket
    for (const { event, data } of greet) dispatch(event, data)
  }

  function resume(socket: WebSocket, sequence: number) {
    sessions.resumed += 1
    connected = socket
    for (const packet of sent.slice(Math.max(0, sequence - replayed))) send(socket, packet)
    replayed = 0
    dispatch('RESUMED', {})
  }

  return {
    url,
    sessions,
    dispatch,
    cut: () => connected?.terminate(),
    closeWith: code => connected?.close(code),
    replay: count => {
      replayed = count
    },
    close: () =>
      new Promise(resolve => {
        for (const socket of sockets.clients) socket.terminate()
        sockets.close(() => resolve())
      }),
  }
}
