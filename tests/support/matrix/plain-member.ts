// A member without an app: says things and reads the whole of a room straight from the server, so that no gap hides any.

import { setTimeout as pause } from 'node:timers/promises'
import type { Synapse } from './synapse.ts'

export interface RoomEvent {
  readonly event_id: string
  readonly sender: string
  readonly type: string
  readonly origin_server_ts: number
  readonly content: {
    readonly msgtype?: string
    readonly body?: string
    readonly 'm.relates_to'?: { readonly 'm.in_reply_to'?: { readonly event_id: string } }
  }
}

export interface PlainMember {
  readonly id: string
  room(options: object): Promise<string>
  join(room: string): Promise<void>
  /** Resolves when that person has joined. */
  waitsFor(room: string, person: string): Promise<void>
  /** Sends text and gives the event's id. */
  say(room: string, body: string): Promise<string>
  /** All that was ever sent to the room, oldest first. */
  everything(room: string): Promise<readonly RoomEvent[]>
}

export async function plainMember(synapse: Synapse, name: string): Promise<PlainMember> {
  const { userId: id, accessToken } = await synapse.register(name)
  let sent = 0

  async function call<T>(method: string, path: string, body?: object): Promise<T> {
    const response = await fetch(`${synapse.url}/_matrix/client/v3/${path}`, {
      method,
      headers: { authorization: `Bearer ${accessToken}` },
      ...(body ? { body: JSON.stringify(body) } : {}),
    })
    if (!response.ok) throw new Error(`${method} ${path}: ${response.status} ${await response.text()}`)
    return (await response.json()) as T
  }
  const at = (room: string) => `rooms/${encodeURIComponent(room)}`

  return {
    id,
    room: async options => (await call<{ room_id: string }>('POST', 'createRoom', options)).room_id,
    join: async room => void (await call('POST', `${at(room)}/join`, {})),
    async waitsFor(room, person) {
      const joined = () => call<{ joined: Record<string, unknown> }>('GET', `${at(room)}/joined_members`)
      while (!Object.hasOwn((await joined()).joined, person)) await pause(100)
    },
    async say(room, body) {
      const path = `${at(room)}/send/m.room.message/${++sent}`
      return (await call<{ event_id: string }>('PUT', path, { msgtype: 'm.text', body })).event_id
    },
    async everything(room) {
      const events: RoomEvent[] = []
      let from: string | undefined
      do {
        const page = await call<{ chunk: RoomEvent[]; end?: string }>(
          'GET',
          `${at(room)}/messages?dir=b&limit=1000${from === undefined ? '' : `&from=${from}`}`,
        )
        events.push(...page.chunk)
        from = page.end
      } while (from !== undefined)
      return events.reverse()
    },
  }
}

/** The answers of `assistant`, by the question that they reply to, oldest first. */
export const answersIn = (events: readonly RoomEvent[], assistant: string): readonly (readonly [string, RoomEvent])[] =>
  events.flatMap(event => {
    const to = event.content['m.relates_to']?.['m.in_reply_to']?.event_id
    return event.sender === assistant && event.type === 'm.room.message' && to !== undefined
      ? [[to, event] as const]
      : []
  })
