// Work done one after another within a lane, and side by side between lanes.

export interface Lanes {
  /** Does the work once all work added before to the same lane has ended. */
  add(lane: string, work: () => Promise<void>): void
  /** Resolves when all work has ended, well or not. */
  settled(): Promise<void>
}

export function createLanes(onFault: (fault: unknown) => void): Lanes {
  const lanes = new Map<string, Promise<void>>()
  return {
    add: (lane, work) => {
      const last = (lanes.get(lane) ?? Promise.resolve()).then(work).catch(onFault)
      lanes.set(lane, last)
      void last.then(() => {
        if (lanes.get(lane) === last) lanes.delete(lane)
      })
    },
    settled: async () => {
      while (lanes.size > 0) await Promise.all(lanes.values())
    },
  }
}
