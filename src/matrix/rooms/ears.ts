// Hears every event of our rooms and lets through what is said to us now and can be read.

import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk'
import { lookedUp } from '../../assistant/lookup.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'
import { idOf } from '../client/occasion.ts'
import { joinedAt_ms } from '../client/room-facts.ts'
import { accept } from './accept.ts'
import type { Conversation } from './conversation.ts'
import type { Lanes } from './lanes.ts'
import type { Undecryptable } from './undecryptable.ts'

export interface EarsParts {
  readonly client: MatrixClient
  readonly answered: AnsweredMemory
  readonly undecryptable: Undecryptable
  readonly lanes: Lanes
  /** Resolves when the first sync has ended: before that, rooms are half known and nothing is answered. */
  readonly synced: Promise<void>
  readonly converse: Conversation['converse']
}

export function createEars({ client, answered, undecryptable, lanes, synced, converse }: EarsParts) {
  const self = client.getSafeUserId()
  const startedAt_ms = Date.now()

  async function listen(event: MatrixEvent, room: Room, now_ms: number): Promise<void> {
    const heard = { sender: event.getSender() ?? '', sentAt_ms: event.getTs() }
    const situation = { self, joinedAt_ms: joinedAt_ms(room), now_ms }
    // Before it is decrypted an event is taken for text: what is old or our own is not worth a key.
    const timely = accept({ ...heard, what: 'm.text' }, { ...situation, answered: false })
    if (timely !== 'accepted' || event.isRedacted()) return

    await client.decryptEventIfNeeded(event)
    if (event.isDecryptionFailure()) {
      undecryptable.await(event, room, () => hear(event, room, now_ms))
      return
    }
    const found = await lookedUp(answered.byQuestion(idOf(event.getId() ?? '')).then(earlier => ({ earlier })))
    // Where the memory is away, only what was said before our start may have been answered already.
    const wasAnswered = found ? found.earlier !== undefined : event.getTs() < startedAt_ms
    const decision = accept({ ...heard, what: kindOf(event) }, { ...situation, answered: wasAnswered })
    if (decision === 'accepted') await converse(event, room)
  }

  function hear(event: MatrixEvent, room: Room, now_ms = Date.now()): void {
    synced.then(
      () => lanes.add(room.roomId, () => listen(event, room, now_ms)),
      () => {},
    )
  }

  return { hear }
}

const kindOf = (event: MatrixEvent): string =>
  event.getType() === 'm.room.message' ? String(event.getOriginalContent().msgtype) : event.getType()
