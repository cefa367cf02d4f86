// How discord.js reaches Discord: what is not answered as it should be is tried again, and the log is told once.

import { DefaultRestOptions, type RESTOptions } from 'discord.js'
import { createPersistence, doubling } from '../../ground/persistence.ts'
import { createSeldom } from '../../ground/seldom.ts'
import type { Log } from '../../program/log.ts'
import { describeFault } from './faults.ts'

export interface RestRules {
  /** Where Discord's REST API is, without its version. */
  readonly api: string
  /** How long one request may take before it is tried again; ten seconds when absent. */
  readonly request_ms?: number | undefined
  /** How long it is tried again; ten minutes when absent. */
  readonly longest_ms?: number
  /** Told once of what goes on for a while; absent where whoever asks tells it. */
  readonly log?: Log
}

type Respond = RESTOptions['makeRequest']
type Response = Awaited<ReturnType<Respond>>

/** An interaction is open for three seconds: a connection that only seems to live leaves time for another. */
const callback_ms = 1200
const firstPause_ms = 250
/** What is due is tried again by the loop that found it so, within its lease. */
export const dueTries_ms = 1000
/** So long nothing more is said of the same. */
const quiet_ms = 600_000

class Faulty extends Error {
  readonly response: Response
  constructor(response: Response) {
    super(`Discord answers ${response.status}`)
    this.response = response
  }
}

export function patientRest({ api, request_ms = 10_000, longest_ms = 600_000, log }: RestRules) {
  const isNews = createSeldom(quiet_ms, Date.now)
  const persistence = createPersistence({
    longest_ms,
    pauseAfter: (_, attempt) => doubling(firstPause_ms, attempt),
    onPause: error => {
      if (isNews('fault'))
        log?.warn({ error: describeFault(error) }, 'Discord does not answer as it should: requests are tried again')
    },
  })

  async function once(url: string, init: Parameters<Respond>[1]): Promise<Response> {
    const patience_ms = url.endsWith('/callback') ? Math.min(request_ms, callback_ms) : request_ms
    const signal = AbortSignal.timeout(patience_ms)
    const response = await DefaultRestOptions.makeRequest(url, { ...init, signal })
    if (response.status >= 500) throw new Faulty(response)
    if (response.status === 429 && isNews('limit'))
      log?.warn({ retryAfter_s: response.headers.get('retry-after') }, 'Discord asks to wait')
    return response
  }

  const makeRequest: Respond = async (url, init) => {
    try {
      return await persistence.run(() => once(url, init))
    } catch (error) {
      if (error instanceof Faulty) return error.response
      throw error
    }
  }
  // The time of each try is ours.
  return { api, makeRequest, retries: 0, timeout: 2 * longest_ms }
}
