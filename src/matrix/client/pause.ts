// When a request that the Matrix server did not carry out is worth another try.

import { ConnectionError, HTTPError } from 'matrix-js-sdk'
import { doubling } from '../../ground/persistence.ts'

/** Milliseconds until another try may help: what the server asks for, else doubling; undefined where none will. */
export function pauseAfter(error: unknown, attempt: number): number | undefined {
  const doubled_ms = doubling(1000, attempt)
  if (error instanceof ConnectionError) return doubled_ms
  if (!(error instanceof HTTPError)) return undefined
  if (error.isRateLimitError()) return askedPause(error) ?? doubled_ms
  return (error.httpStatus ?? 0) >= 500 ? doubled_ms : undefined
}

/** The SDK throws where the server's wish cannot be read. */
function askedPause(error: HTTPError): number | undefined {
  try {
    return error.getRetryAfterMs() ?? undefined
  } catch {
    return undefined
  }
}
