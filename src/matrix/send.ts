// Sends events so that each arrives once: through rate limits, outages, and a crash between sending and noting it.

import { createHash } from 'node:crypto'
import type { MatrixClient } from 'matrix-js-sdk'
import type { Persistence } from './persistence.ts'

export interface Sender {
  /**
   * Sends an event and gives its id. The server takes one event for each `key` (from this device), however often it
   * is sent. Rejects as persistence does.
   */
  send(roomId: string, type: string, content: object, key: string): Promise<string>
}

type SendAnyEvent = (
  roomId: string,
  threadId: null,
  type: string,
  content: object,
  transaction: string,
) => Promise<{ event_id: string }>

export function createSender(client: MatrixClient, persistence: Persistence): Sender {
  const sendEvent = client.sendEvent.bind(client) as unknown as SendAnyEvent

  /** The client keeps an event that failed: it is sent again as it is, with its encryption. */
  async function sendAgain(roomId: string, transaction: string): Promise<{ event_id: string }> {
    const { room, event } = pending(client, roomId, transaction)
    if (!room || !event) throw new Error('the event to send again is gone')
    return client.resendEvent(event, room)
  }

  return {
    async send(roomId, type, content, key) {
      const transaction = transactionId(key)
      try {
        const sent = await persistence.run(attempt =>
          attempt === 1
            ? sendEvent(roomId, null, type, content, transaction)
            : sendAgain(roomId, transaction),
        )
        return sent.event_id
      } catch (error) {
        // One that failed would hold back all later events of its room.
        const { event } = pending(client, roomId, transaction)
        if (event) client.cancelPendingEvent(event)
        throw error
      }
    },
  }
}

/** The same for the same key, so that the server knows an event that it already has. */
export const transactionId = (key: string): string =>
  `c${createHash('sha256').update(key).digest('base64url').slice(0, 32)}`

function pending(client: MatrixClient, roomId: string, transaction: string) {
  const room = client.getRoom(roomId)
  return { room, event: room?.getPendingEvents().find(event => event.getTxnId() === transaction) }
}
