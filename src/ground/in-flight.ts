// Work under way: so that a stop can wait for it.

export function createInFlight() {
  const works = new Set<Promise<unknown>>()
  return {
    add: (work: Promise<unknown>) => {
      works.add(work)
      const done = () => works.delete(work)
      work.then(done, done)
    },
    /** Resolves when everything added so far has ended, well or not. */
    settled: async () => {
      await Promise.allSettled(works)
    },
  }
}
