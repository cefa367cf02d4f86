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

export interface GatewayEvent {
  readonly event: string
  readonly data: unknown
}

/** The number of a shard, and of how many. */
export type Shard = readonly [number, number]

/** One session: its events in order, and its connection. */
interface Session {
  readonly shard: Shard
  readonly sent: Packet[]
  connected: WebSocket
}

export interface FakeGateway {
  readonly url: string
  readonly sessions: { readonly identified: number; readonly resumed: number }
  /** Sends an event to the shard of its server, where it is of one; kept for a resume. */
  dispatch(event: string, data: unknown): void
  /** Kills the connections without a word, as a cable pulled out does. */
  cut(): void
  /** They stay open, and nothing comes through them any longer. */
  fallSilent(): void
  /** Closes them with one of Discord's codes. */
  closeWith(code: number): void
  /** At the next resume, sends the last `count` events again, though they were sent before. */
  replay(count: number): void
  close(): Promise<void>
}

export interface GatewayRules {
  readonly url: string
  readonly token: string
  /** What a shard is told first. */
  readonly greet: (shard: Shard) => Iterable<GatewayEvent>
  /** Servers in all: a shard takes 2,500 at most. */
  readonly servers?: number
  /** How often it wants to hear from whoever is connected; as Discord when absent. */
  readonly heartbeat_ms?: number
}

const shardingRequired = 4011
const mostOfShard = 2500

/** https://docs.discord.com/developers/events/gateway#sharding-sharding-formula */
export const shardOf = (server: string, count: number): number => Number((BigInt(server) >> 22n) % BigInt(count))

export function fakeGateway(server: Server, rules: GatewayRules): FakeGateway {
  const { url, token, greet, servers = 1, heartbeat_ms = 45_000 } = rules
  const sockets = new WebSocketServer({ server })
  const sessions = { identified: 0, resumed: 0 }
  const all = new Map<number, Session>()
  let replayed = 0
  let isSilent = false

  const send = (socket: WebSocket, packet: Packet) => socket.send(JSON.stringify(packet))

  function dispatchTo(session: Session, event: GatewayEvent): void {
    // Read when it is sent: of many servers none is kept here.
    const packet: Packet = {
      op: op.dispatch,
      t: event.event,
      s: session.sent.length + 1,
      get d() {
        return event.data
      },
    }
    session.sent.push(packet)
    if (!isSilent && session.connected.readyState === session.connected.OPEN) send(session.connected, packet)
  }

  sockets.on('connection', socket => {
    isSilent = false
    send(socket, { op: op.hello, d: { heartbeat_interval: heartbeat_ms } })
    socket.on('message', raw => {
      const packet = JSON.parse(raw.toString())
      if (isSilent) return
      if (packet.op === op.heartbeat) send(socket, { op: op.heartbeatAck, d: null })
      else if (packet.op === op.identify) identify(socket, packet.d)
      else if (packet.op === op.resume) resume(socket, packet.d)
    })
  })

  function identify(socket: WebSocket, asked: { token: string; intents: number; shard?: Shard }) {
    const { token: given, intents, shard = [0, 1] } = asked
    if (given !== token) return socket.close(authenticationFailed, 'Authentication failed.')
    if ((intents & privilegedIntents) !== 0) return socket.close(disallowedIntents, 'Disallowed intent(s).')
    if (servers > mostOfShard * shard[1]) return socket.close(shardingRequired, 'Sharding required.')
    sessions.identified += 1
    const session: Session = { shard, sent: [], connected: socket }
    all.set(shard[0], session)
    for (const event of greet(shard)) dispatchTo(session, event)
  }

  function resume(socket: WebSocket, { seq, session_id }: { seq: number; session_id: string }) {
    const session = all.get(Number(session_id.replace('session ', '')))
    if (!session) return
    sessions.resumed += 1
    session.connected = socket
    for (const packet of session.sent.slice(Math.max(0, seq - replayed))) send(socket, packet)
    replayed = 0
    dispatchTo(session, { event: 'RESUMED', data: {} })
  }

  const connections = () => [...all.values()].map(({ connected }) => connected)

  return {
    url,
    sessions,
    dispatch: (event, data) => {
      const of = (data as { guild_id?: string }).guild_id
      for (const session of all.values())
        if (session.shard[0] === (of === undefined ? 0 : shardOf(of, session.shard[1])))
          dispatchTo(session, { event, data })
    },
    cut: () => {
      for (const socket of connections()) socket.terminate()
    },
    fallSilent: () => {
      isSilent = true
    },
    closeWith: code => {
      for (const socket of connections()) socket.close(code)
    },
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
