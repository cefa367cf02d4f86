// The questions asked in the room, kept from one visit to the next.

import { readFileSync, writeFileSync } from 'node:fs'

const longest = 200

export function historyIn(file: string) {
  return {
    /** Latest first, as readline wants it; empty where none was kept. */
    read: () => {
      try {
        return readFileSync(file, 'utf8').split('\n').filter(Boolean).slice(0, longest)
      } catch {
        return []
      }
    },
    keep: (history: readonly string[]) => {
      // A lost history must not cost an answer: a full or read-only disk is no reason to stop.
      try {
        writeFileSync(file, history.slice(0, longest).join('\n'), { mode: 0o600 })
      } catch {}
    },
  }
}
