// What is said seldom: once, and then not again for a while.

/** True the first time in `period_ms` that it is called with the key. */
export function createSeldom(period_ms: number, now_ms: () => number): (key: string) => boolean {
  /** Oldest first. */
  const last_ms = new Map<string, number>()
  return key => {
    for (const [one, at_ms] of last_ms) {
      if (now_ms() - at_ms < period_ms) break
      last_ms.delete(one)
    }
    if (last_ms.has(key)) return false
    last_ms.set(key, now_ms())
    return true
  }
}
