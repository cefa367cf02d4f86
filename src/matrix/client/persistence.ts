// Tries a request again while the server is away or asks us to wait.

import { setTimeout as sleep } from 'node:timers/promises'
import { ConnectionError, HTTPError } from 'matrix-js-sdk'

export interface Persistence {
  /** Does the work until it succeeds. Rejects where the server refuses, or cannot be reached for ten minutes. */
  run<T>(work: (attempt: number) => Promise<T>): Promise<T>
  /** From now on nothing is tried again. */
  close(): void
}

const longest_ms = 600_000
const longestPause_ms = 30_000

export function createPersistence(): Persistence {
  const closing = new AbortController()
  return {
    async run(work) {
      const deadline_ms = performance.now() + longest_ms
      for (let attempt = 1; ; attempt += 1) {
        try {
          return await work(attempt)
        } catch (error) {
          const pause_ms = pauseAfter(error, attempt)
          if (pause_ms === undefined || performance.now() + pause_ms > deadline_ms) throw error
          if (!(await elapsed(pause_ms, closing.signal))) throw error
        }
      }
    },
    close: () => closing.abort(),
  }
}

/** Milliseconds until another try may help: what the server asks for, else doubling; undefined where none will. */
export function pauseAfter(error: unknown, attempt: number): number | undefined {
  const doubling_ms = Math.min(longestPause_ms, 500 * 2 ** attempt)
  if (error instanceof ConnectionError) return doubling_ms
  if (!(error instanceof HTTPError)) return undefined
  if (error.isRateLimitError()) return askedPause(error) ?? doubling_ms
  return (error.httpStatus ?? 0) >= 500 ? doubling_ms : undefined
}

/** The SDK throws where the server's wish cannot be read. */
function askedPause(error: HTTPError): number | undefined {
  try {
    return error.getRetryAfterMs() ?? undefined
  } catch {
    return undefined
  }
}

/** False where the wait was cut short. */
const elapsed = (pause_ms: number, signal: AbortSignal): Promise<boolean> =>
  sleep(pause_ms, true, { signal }).catch(() => false)
