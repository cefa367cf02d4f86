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

/** What goes on in a room. */
interface Hearing {
  readonly queue: Queue<Waiting>
  /** How much is being read or answered. */
  underway: number
  /** Others than we have said something since the last mark. */
  isNew: boolean
}

export function createEars(parts: EarsParts) {
  const { client, bots, answered, unread, undecryptable, lanes, synced, converse, isUrgent, onFault } = parts
  const self = client.getSafeUserId()
  const startedAt_ms = Date.now()
  const hearings = new Map<string, Hearing>()
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

  function hearingIn({ roomId }: Room): Hearing {
    const hearing = hearings.get(roomId) ?? { queue: createQueue<Waiting>(), underway: 0, isNew: false }
    hearings.set(roomId, hearing)
    return hearing
  }

  /** Only where nothing is under way any longer: what was not dealt with by then is left to the next start. */
  async function markIn(room: Room, hearing: Hearing): Promise<void> {
    const isDone = hearing.underway === 0 && hearing.queue.isEmpty()
    if (!hearing.isNew || !isDone || !listening || room.getMyMembership() !== 'join') return
    hearing.isNew = false
    await unread.mark(room)
  }

  async function during(room: Room, hearing: Hearing, work: () => Promise<void>): Promise<void> {
    hearing.underway += 1
    await work().catch(onFault)
    hearing.underway -= 1
    // Nobody waits for a server that takes its time with it.
    lanes.add(`${room.roomId} mark`, () => markIn(room, hearing))
  }

  async function goOn(room: Room, next: (queue: Queue<Waiting>) => Waiting | undefined): Promise<void> {
    const hearing = hearingIn(room)
    for (let one = next(hearing.queue); one && listening; one = next(hearing.queue)) {
      const { event, sender } = one
      // What we say ourselves is worth no mark.
      hearing.isNew ||= sender !== self
      await during(room, hearing, () => listen(event, room))
    }
  }

  /** One after another; but a danger waits for no answer, however long that takes to be worked out and sent. */
  async function takeIn(room: Room): Promise<void> {
    if (!listening || room.getMyMembership() !== 'join') return
    const hearing = hearingIn(room)
    await during(room, hearing, async () => hearing.queue.add(await waitingIn(room)))
    lanes.add(room.roomId, () => goOn(room, queue => queue.next()))
    lanes.add(`${room.roomId} passing`, () => goOn(room, queue => queue.passing(mayPass)))
  }

  return {
    /** Something was said in the room. */
    hear(room: Room): void {
      synced.then(
        () => lanes.add(`${room.roomId} heard`, () => takeIn(room)),
        () => {},
      )
    },
    /** We are no longer in the room. */
    forget(room: Room): void {
      hearings.delete(room.roomId)
      unread.forget(room)
    },
    /** What was not begun is left to the next start. */
    stop(): void {
      listening = false
    },
  }
}

/** An edit has to wait for the answer to what it changes. */
const mayPass = ({ event }: Waiting): boolean => event.getRelation()?.rel_type !== 'm.replace'

const kindOf = (event: MatrixEvent): string =>
  event.getType() === 'm.room.message' ? String(event.getOriginalContent().msgtype) : event.getType()
