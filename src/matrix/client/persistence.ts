// Tries again what the Matrix server did not carry out, and tells the log once.

import { ClientEvent, ConnectionError, HTTPError, type MatrixClient, SyncState } from 'matrix-js-sdk'
import { createPersistence, doubling, type Persistence } from '../../ground/persistence.ts'
import { createSeldom } from '../../ground/seldom.ts'
import { describeError, type Log } from '../../program/log.ts'

/** So long nothing more is said of a server in trouble. */
const quiet_ms = 600_000

/** For what we send; what is new in the rooms the SDK itself asks for again. */
export function persistenceOf(client: MatrixClient, log: Log): Persistence {
  const isNews = createSeldom(quiet_ms, Date.now)
  const onPause = (error: unknown) => {
    if (isNews(''))
      log.warn({ error: describeError(error) }, 'the Matrix server does not answer as it should: it is asked again')
  }
  client.on(ClientEvent.Sync, (state, _, data) => {
    if (state === SyncState.Error) onPause(data?.error)
  })
  return createPersistence({ pauseAfter, onPause })
}

/** Milliseconds until another try may help: what the server asks for, else doubling; undefined where none will. */
export function pauseAfter(error: unknown, attempt: number): number | undefined {
  const doubled_ms = doubling(1000, attempt)
  if (error instanceof ConnectionError || isTimedOut(error)) return doubled_ms
  if (!(error instanceof HTTPError)) return undefined
  if (error.isRateLimitError()) return askedPause(error) ?? doubled_ms
  return (error.httpStatus ?? 0) >= 500 ? doubled_ms : undefined
}

/** The SDK gave up waiting for an answer. */
const isTimedOut = (error: unknown): boolean => error instanceof Error && error.name === 'AbortError'

/** The SDK throws where the server's wish cannot be read. */
function askedPause(error: HTTPError): number | undefined {
  try {
    return error.getRetryAfterMs() ?? undefined
  } catch {
    return undefined
  }
}
