// Tries a request again while a platform is away or asks us to wait.

export interface Persistence {
  /** Does the work until it succeeds. Rejects where no other try would help, or none has helped for too long. */
  run<T>(work: (attempt: number) => Promise<T>): Promise<T>
  /** From now on nothing is tried again. */
  close(): void
}

export interface PersistenceRules {
  /** Milliseconds until another try may help; undefined where none will. */
  readonly pauseAfter: (error: unknown, attempt: number) => number | undefined
  /** Told of each failure after which there is another try. */
  readonly onPause?: (error: unknown) => void
  /** Ten minutes when absent. */
  readonly longest_ms?: number
}

export function createPersistence(rules: PersistenceRules): Persistence {
  const { pauseAfter, onPause, longest_ms = 600_000 } = rules
  const cut = new Set<() => void>()
  let isClosed = false

  /** False where the wait was cut short. */
  async function elapsed(pause_ms: number): Promise<boolean> {
    if (isClosed) return false
    const { promise, resolve } = Promise.withResolvers<boolean>()
    const cutShort = () => resolve(false)
    cut.add(cutShort)
    const timer = setTimeout(resolve, pause_ms, true)
    const isOver = await promise
    clearTimeout(timer)
    cut.delete(cutShort)
    return isOver
  }

  return {
    async run(work) {
      const deadline_ms = performance.now() + longest_ms
      for (let attempt = 1; ; attempt += 1) {
        try {
          return await work(attempt)
        } catch (error) {
          const pause_ms = pauseAfter(error, attempt)
          if (pause_ms === undefined || performance.now() + pause_ms > deadline_ms) throw error
          onPause?.(error)
          if (!(await elapsed(pause_ms))) throw error
        }
      }
    },
    close() {
      isClosed = true
      for (const cutShort of cut) cutShort()
    },
  }
}

/** From `first_ms` on twice as long each time, up to half a minute. */
export const doubling = (first_ms: number, attempt: number): number => Math.min(30_000, first_ms * 2 ** (attempt - 1))
