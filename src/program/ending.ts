// How the program ends: in one line for whoever runs it, with an exit code by what they have to do about it.

import { MemoryError, type MemoryFault } from '../memory/memory-error.ts'

/** Numbers of sysexits.h; the runbook has them in a table. `later` is worth another try without anybody's hand. */
const codes = { fault: 1, damaged: 65, closed: 73, full: 74, later: 75, newer: 76, refused: 77, settings: 78 } as const

const ofMemory: Readonly<Record<MemoryFault, keyof typeof codes>> = {
  away: 'later',
  locked: 'later',
  full: 'full',
  'read-only': 'closed',
  closed: 'closed',
  broken: 'damaged',
  newer: 'newer',
}

/** The program cannot start or go on, for a reason that its host can mend. */
export class EndingError extends Error {
  override name = 'EndingError'
  readonly reason: keyof typeof codes

  constructor(message: string, reason: keyof typeof codes) {
    super(message)
    this.reason = reason
  }
}

/** Says in one line why it ends, and gives the exit code. A fault of ours is thrown on. */
export function endingOf(error: unknown): number {
  if (!(error instanceof EndingError || error instanceof MemoryError)) throw error
  process.stderr.write(`${error.message}\n`)
  return codes[error instanceof EndingError ? error.reason : error.fault ? ofMemory[error.fault] : 'fault']
}
