// Goes on in a room from where it was left, event after event, and lets through what is said to us and can be read.

import type { MatrixClient, MatrixEvent, Room } from 'matrix-js-sdk'
import { lookedUp } from '../../assistant/lookup.ts'
import { createQueue, type Queue } from '../../assistant/running/queue.ts'
import type { Lanes } from '../../ground/lanes.ts'
import type { AnsweredMemory } from '../../memory/memory.ts'
import { idOf } from '../client/occasion.ts'
import { joinedAt_ms } from '../client/room-facts.ts'
import { accept } from './accept.ts'
import type { Conversation } from './conversation.ts'
import type { Undecryptable } from './undecryptable.ts'
import type { Unread } from './unread.ts'

export interface EarsParts {
  readonly client: MatrixClient
  readonly bots: readonly string[]
  readonly answered: AnsweredMemory
  readonly unread: Unread
  readonly undecryptable: Undecryptable
  readonly lanes: Lanes
  /** Resolves when the first sync has ended: before that, rooms are half known and nothing is answered. */
  readonly synced: Promise<void>
  readonly converse: Conversation['converse']
  readonly isUrgent: Conversation['isUrgent']
  readonly onFault: (fault: unknown) => void
}

interface Waiting {
  readonly event: MatrixEvent
  readonly sender: string
  readonly urgent: boolean
}

export function createEars(parts: EarsParts) {
  const { client, bots, answered, unread, undecryptable, lanes, synced, converse, isUrgent, onFault } = parts
  const self = client.getSafeUserId()
  const startedAt_ms = Date.now()
  const queues = new Map<string, Queue<Waiting>>()
  let listening = true

  async function listen(event: MatrixEvent, room: Room): Promise<void> {
    const heard = { sender: event.getSender() ?? '', sentAt_ms: event.getTs() }
    const situation = { self, bots, joinedAt_ms: joinedAt_ms(room) }
    // Before it is decrypted an event is taken for text: what is old or our own is not worth a key.
    const timely = accept({ ...heard, what: 'm.text' }, { ...situation, answered: false })
    if (timely !== 'accepted' || event.isRedacted()) return

    await client.decryptEventIfNeeded(event)
    if (event.isDecryptionFailure()) {
      undecryptable.await(event, room, () => lanes.add(room.roomId, () => listen(event, room)))
      return
    }
    const found = await lookedUp(answered.byQuestion(idOf(event.getId() ?? '')).then(earlier => ({ earlier })))
    // Where the memory is away, only what was said before our start may have been answered already.
    const wasAnswered = found ? found.earlier !== undefined : event.getTs() < startedAt_ms
    const decision = accept({ ...heard, what: kindOf(event) }, { ...situation, answered: wasAnswered })
    if (decision === 'accepted') await converse(event, room)
  }

  /** What is new in the room, with what the order of answers hangs on. */
  const waitingIn = async (room: Room): Promise<readonly Waiting[]> =>
    Promise.all(
      (await unread.in(room)).map(async event => {
        const sender = event.getSender() ?? ''
        if (sender !== self) await client.decryptEventIfNeeded(event).catch(onFault)
        return { event, sender, urgent: sender !== self && isUrgent(event, room) }
      }),
    )

  async function goOn(room: Room): Promise<void> {
    if (room.getMyMembership() !== 'join') return
    const queue = queues.get(room.roomId) ?? createQueue<Waiting>()
    queues.set(room.roomId, queue)
    let isNew = false
    while (listening) {
      queue.add(await waitingIn(room))
      const next = queue.next()
      if (!next) break
      await listen(next.event, room).catch(onFault)
      // What we say ourselves is worth no mark.
      isNew ||= next.sender !== self
    }
    if (isNew && listening && room.getMyMembership() === 'join') await unread.mark(room)
  }

  return {
    /** Something was said in the room. */
    hear(room: Room): void {
      synced.then(
        () => lanes.add(room.roomId, () => goOn(room)),
        () => {},
      )
    },
    /** We are no longer in the room. */
    forget(room: Room): void {
      queues.delete(room.roomId)
      unread.forget(room)
    },
    /** What was not begun is left to the next start. */
    stop(): void {
      listening = false
    },
  }
}

const kindOf = (event: MatrixEvent): string =>
  event.getType() === 'm.room.message' ? String(event.getOriginalContent().msgtype) : event.getType()
