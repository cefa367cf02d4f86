// Work done one after another within a lane, and side by side between lanes.

export function createLanes(onFault: (fault: unknown) => void) {
  const lanes = new Map<string, Promise<void>>()
  return {
    /** Does the work once all work added before to the same lane has ended. */
    add: (lane: string, work: () => Promise<void>) => {
      const last = (lanes.get(lane) ?? Promise.resolve()).then(work).catch(onFault)
      lanes.set(lane, last)
      void last.then(() => {
        if (lanes.get(lane) === last) lanes.delete(lane)
      })
    },
    /** Resolves when all work has ended, well or not. */
    settled: async () => {
      while (lanes.size > 0) await Promise.all(lanes.values())
    },
  }
}

export type Lanes = ReturnType<typeof createLanes>
