// The ids of the events seen lately: after a reconnect Discord sends some of them again.

/** Remembers the last `most` ids. */
export function createRecentIds(most = 10_000) {
  const ids = new Set<string>()
  return {
    /** True the first time an id is seen. */
    isNew: (id: string) => {
      if (ids.has(id)) return false
      ids.add(id)
      if (ids.size > most) ids.delete(ids.values().next().value ?? '')
      return true
    },
  }
}
