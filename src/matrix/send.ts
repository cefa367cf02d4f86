// Sends events so that each arrives once: through rate limits, outages, and a crash between sending and noting it.

import { createHash } from 'node:crypto'
import { setTimeout as sleep } from 'node:timers/promises'
import { ConnectionError, HTTPError, type MatrixClient } from 'matrix-js-sdk'

export interface Sender {
  /**
   * Sends an event and gives its id. The server takes one event for each `key` (from this device), however often
   * it is sent. Rejects where the server refuses it, or cannot be reached for ten minutes.
   */
  send(roomId: string, type: string, content: object, key: string): Promise<string>
  /** From now on nothing is tried again. */
  close(): void
}

const longest_ms = 600_000
const longestPause_ms = 30_000

type SendAnyEvent = (
  roomId: string,
  threadId: null,
  type: string,
  content: object,
  transaction: string,
) => Promise<{ event_id: string }>

export function createSender(client: MatrixClient): Sender {
  const closing = new AbortController()
  const sendEvent = client.sendEvent.bind(client) as unknown as SendAnyEvent

  /** The client keeps an event that failed: it is sent again as it is, with its encryption. */
  async function again(roomId: string, transaction: string): Promise<{ event_id: string }> {
    const { room, event } = pending(client, roomId, transaction)
    if (!room || !event) throw new Error('the event to send again is gone')
    return client.resendEvent(event, room)
  }

  return {
    async send(roomId, type, content, key) {
      const transaction = transactionId(key)
      const deadline = performance.now() + longest_ms
      for (let attempt = 1; ; attempt += 1) {
        try {
          const sent =
            attempt === 1 ? sendEvent(roomId, null, type, content, transaction) : again(roomId, transaction)
          return (await sent).event_id
        } catch (error) {
          const pause = pauseAfter(error, attempt)
          const ended =
            pause === undefined ||
            performance.now() + pause > deadline ||
            !(await elapsed(pause, closing.signal))
          if (!ended) continue
          const { event } = pending(client, roomId, transaction)
          // One that failed would hold back all later events of its room.
          if (event) client.cancelPendingEvent(event)
          throw error
        }
      }
    },
    close: () => closing.abort(),
  }
}

/** The same for the same key, so that the server knows an event that it already has. */
export const transactionId = (key: string): string =>
  `c${createHash('sha256').update(key).digest('base64url').slice(0, 32)}`

/** Milliseconds until another try may help: what the server asks for, else doubling; undefined where none will. */
export function pauseAfter(error: unknown, attempt: number): number | undefined {
  const doubling = Math.min(longestPause_ms, 500 * 2 ** attempt)
  if (error instanceof ConnectionError) return doubling
  if (!(error instanceof HTTPError)) return undefined
  if (error.isRateLimitError()) return askedPause(error) ?? doubling
  return (error.httpStatus ?? 0) >= 500 ? doubling : undefined
}

function askedPause(error: HTTPError): number | undefined {
  try {
    return error.getRetryAfterMs() ?? undefined
  } catch {
    return undefined
  }
}

function pending(client: MatrixClient, roomId: string, transaction: string) {
  const room = client.getRoom(roomId)
  return { room, event: room?.getPendingEvents().find(event => event.getTxnId() === transaction) }
}

/** False where the wait was cut short. */
const elapsed = (pause_ms: number, signal: AbortSignal): Promise<boolean> =>
  sleep(pause_ms, true, { signal }).catch(() => false)
