// The ids of the events seen lately: after a reconnect Discord sends some of them again.

/** Remembers the last `most` ids. */
export function createRecentIds(most = 10_000) {
  const ids = new Set<string>()
  return {
    /** True the first time an id is seen. */
    isNew: (id: string) => {
      if (ids.has(id)) return false
      ids.add(id)
      const [oldest] = ids
      if (ids.size > most && oldest !== undefined) ids.delete(oldest)
      return true
    },
  }
}
