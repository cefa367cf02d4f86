// A member of the club at a Matrix app of their own: a real client that keeps nothing.

import { setTimeout as sleep } from 'node:timers/promises'
import {
  ClientEvent,
  type ICreateRoomOpts,
  MatrixClient,
  type MatrixEvent,
  MemoryStore,
  Preset,
  SyncState,
} from 'matrix-js-sdk'
import { quiet } from '../../../src/matrix/client/quiet.ts'
import type { Synapse } from './synapse.ts'

export interface Content {
  msgtype: string
  body: string
  [key: string]: unknown
}

/** Waits until `found` gives something; after `patience_ms` fails with what was waited for. */
export async function until<T>(what: string, found: () => T | undefined | false, patience_ms = 20_000): Promise<T> {
  const deadline = Date.now() + patience_ms
  for (;;) {
    const result = found()
    if (result !== undefined && result !== false) return result
    if (Date.now() > deadline) throw new Error(`waited ${patience_ms} ms in vain: ${what}`)
    await sleep(50)
  }
}

export class Member {
  readonly client: MatrixClient
  readonly id: string

  private constructor(client: MatrixClient) {
    this.client = client
    this.id = client.getSafeUserId()
  }

  static async at(synapse: Synapse, name: string): Promise<Member> {
    const login = await synapse.register(name)
    const client = new MatrixClient({
      baseUrl: synapse.url,
      userId: login.userId,
      deviceId: login.deviceId,
      accessToken: login.accessToken,
      store: new MemoryStore(),
      logger: quiet,
    })
    await client.initRustCrypto({ useIndexedDB: false })
    const ready = new Promise<void>(resolve =>
      client.on(ClientEvent.Sync, state => {
        if (state === SyncState.Prepared) resolve()
      }),
    )
    await client.startClient({ initialSyncLimit: 50 })
    await ready
    return new Member(client)
  }

  leave(): void {
    this.client.stopClient()
  }

  /** Makes a room with the assistant in it. */
  async roomWith(assistant: string, options: ICreateRoomOpts & { encrypted?: boolean } = {}): Promise<string> {
    const { encrypted = false, ...rest } = options
    const { room_id } = await this.client.createRoom({
      preset: Preset.PrivateChat,
      name: 'Club field',
      invite: [assistant],
      ...(encrypted
        ? {
            initial_state: [
              { type: 'm.room.encryption', state_key: '', content: { algorithm: 'm.megolm.v1.aes-sha2' } },
            ],
          }
        : {}),
      ...rest,
    })
    await until('the assistant joins', () => this.membership(room_id, assistant) === 'join')
    return room_id
  }

  membership(roomId: string, person: string): string | undefined {
    return this.client.getRoom(roomId)?.getMember(person)?.membership
  }

  /** Sends text and gives the event's id. */
  async say(roomId: string, body: string, more: object = {}): Promise<string> {
    return this.send(roomId, { msgtype: 'm.text', body, ...more })
  }

  async send(roomId: string, content: object, type = 'm.room.message'): Promise<string> {
    const { event_id } = await this.client.sendEvent(roomId, type as never, content as never)
    return event_id
  }

  /** What `person` said in the room as far as this member sees, edits not applied, oldest first. */
  heard(roomId: string, person: string): MatrixEvent[] {
    const events = this.client.getRoom(roomId)?.getLiveTimeline().getEvents() ?? []
    return events.filter(event => event.getSender() === person && event.getType() === 'm.room.message')
  }

  answersTo(roomId: string, questionId: string, assistant: string): MatrixEvent[] {
    return this.heard(roomId, assistant).filter(
      event => event.getWireContent()['m.relates_to']?.['m.in_reply_to']?.event_id === questionId,
    )
  }

  /** The first answer to the question. */
  async answer(roomId: string, questionId: string, assistant: string): Promise<MatrixEvent> {
    return until(`an answer to ${questionId}`, () => this.answersTo(roomId, questionId, assistant)[0])
  }

  /** What the first answer to the question says now, edits applied. */
  async said(roomId: string, questionId: string, assistant: string): Promise<Content> {
    const content = (await this.answer(roomId, questionId, assistant)).getOriginalContent() as Content
    // A number is kept with its unit by a space of its own.
    return { ...content, body: content.body.replaceAll('\u00a0', ' ') }
  }

  /** The edits of an event, oldest first. */
  edits(roomId: string, eventId: string): MatrixEvent[] {
    const events = this.client.getRoom(roomId)?.getLiveTimeline().getEvents() ?? []
    return events.filter(event => {
      const relation = event.getWireContent()['m.relates_to']
      return relation?.rel_type === 'm.replace' && relation.event_id === eventId
    })
  }

  /** What `person` has put below an event, in order. */
  signs(roomId: string, eventId: string, person: string): string[] {
    const events = this.client.getRoom(roomId)?.getLiveTimeline().getEvents() ?? []
    return events
      .filter(event => event.getSender() === person && event.getType() === 'm.reaction')
      .flatMap(event => (event.getRelation()?.event_id === eventId ? [event.getRelation()?.key ?? ''] : []))
  }

  async edit(roomId: string, eventId: string, body: string): Promise<string> {
    return this.send(roomId, {
      msgtype: 'm.text',
      body: `* ${body}`,
      'm.new_content': { msgtype: 'm.text', body },
      'm.relates_to': { rel_type: 'm.replace', event_id: eventId },
    })
  }

  async react(roomId: string, eventId: string, key: string): Promise<string> {
    return this.send(roomId, { 'm.relates_to': { rel_type: 'm.annotation', event_id: eventId, key } }, 'm.reaction')
  }
}
