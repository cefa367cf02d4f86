// Work under way: so that a stop can wait for it.

export interface InFlight {
  add(work: Promise<unknown>): void
  /** Resolves when everything added so far has ended, well or not. */
  settled(): Promise<void>
}

export function createInFlight(): InFlight {
  const works = new Set<Promise<unknown>>()
  return {
    add: work => {
      works.add(work)
      const done = () => works.delete(work)
      work.then(done, done)
    },
    settled: async () => {
      await Promise.allSettled(works)
    },
  }
}
