// Sends events so that each arrives once: through rate limits, outages, and a crash between sending and noting it.

import { createHash } from 'node:crypto'
import { EventStatus, type MatrixClient, type MatrixEvent } from 'matrix-js-sdk'
import type { Persistence } from '../../ground/persistence.ts'

export interface Sender {
  /**
   * Sends an event and gives its id. The server takes one event for each `key` (from this device), however often it
   * is sent. Rejects as persistence does.
   */
  send(roomId: string, type: string, content: object, key: string): Promise<string>
  /** As `send`, with one try: what may be done without must hold back nothing that comes later in its room. */
  trySending(roomId: string, type: string, content: object, key: string): Promise<string>
  /** Takes an event of ours away, once or again. */
  redact(roomId: string, eventId: string): Promise<void>
}

interface Sent {
  readonly event_id?: string
}

type SendAnyEvent = (
  roomId: string,
  threadId: null,
  type: string,
  content: object,
  transaction: string,
) => Promise<Sent>

export function createSender(client: MatrixClient, persistence: Persistence): Sender {
  const sendEvent = client.sendEvent.bind(client) as unknown as SendAnyEvent

  /** The client keeps an event that failed: it is sent again as it is, with its encryption. */
  async function sendAgain(roomId: string, transaction: string): Promise<Sent> {
    const { room, event } = pending(client, roomId, transaction)
    if (!room || !event) throw new Error('the event to send again is gone')
    return client.resendEvent(event, room)
  }

  /** The client takes none behind one that failed and waits to be sent again; but the server may well take this one. */
  async function sendFirst(roomId: string, type: string, content: object, transaction: string): Promise<Sent> {
    const isHeldBack = client.getRoom(roomId)?.getPendingEvents().some(isNotSent)
    const sending = sendEvent(roomId, null, type, content, transaction)
    return isHeldBack ? sending.catch(() => sendAgain(roomId, transaction)) : sending
  }

  /** The SDK ends a sending without an id where the event turns up in the room while it is being encrypted. */
  async function sendOrFind(
    roomId: string,
    type: string,
    content: object,
    key: string,
    { run }: Pick<Persistence, 'run'>,
  ): Promise<string> {
    const transaction = transactionId(key)
    const before = sentBefore(client, roomId, transaction)
    if (before !== undefined) return before
    const sent = await run(attempt =>
      attempt === 1 ? sendFirst(roomId, type, content, transaction) : sendAgain(roomId, transaction),
    )
    const id = sent.event_id ?? sentBefore(client, roomId, transaction)
    if (id === undefined) throw new Error('an event was neither sent nor found in its room')
    return id
  }

  async function sendOnce(
    roomId: string,
    type: string,
    content: object,
    key: string,
    patience: Pick<Persistence, 'run'>,
  ): Promise<string> {
    try {
      return await sendOrFind(roomId, type, content, key, patience)
    } catch (error) {
      // One that failed would hold back all later events of its room.
      const { event } = pending(client, roomId, transactionId(key))
      if (event) client.cancelPendingEvent(event)
      throw error
    }
  }

  /** The client takes no second event of a transaction while it tries the first. */
  const underway = new Map<string, Promise<string>>()
  return {
    send(roomId, type, content, key) {
      const sending =
        underway.get(key) ?? sendOnce(roomId, type, content, key, persistence).finally(() => underway.delete(key))
      underway.set(key, sending)
      return sending
    },
    trySending: (roomId, type, content, key) =>
      sendOnce(roomId, type, content, key, { run: async work => await work(1) }),
    redact: async (roomId, eventId) => void (await persistence.run(() => client.redactEvent(roomId, eventId))),
  }
}

/** The same for the same key, so that the server knows an event that it already has. */
export const transactionId = (key: string): string =>
  `c${createHash('sha256').update(key).digest('base64url').slice(0, 32)}`

const isNotSent = ({ status }: MatrixEvent): boolean => status === EventStatus.NOT_SENT

/** The server tells the device that sent an event under which transaction it did. */
function sentBefore(client: MatrixClient, roomId: string, transaction: string): string | undefined {
  const events = client.getRoom(roomId)?.getLiveTimeline().getEvents() ?? []
  return events.findLast(event => event.getUnsigned().transaction_id === transaction)?.getId()
}

function pending(client: MatrixClient, roomId: string, transaction: string) {
  const room = client.getRoom(roomId)
  return { room, event: room?.getPendingEvents().find(event => event.getTxnId() === transaction) }
}
