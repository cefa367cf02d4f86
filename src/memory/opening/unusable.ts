// What is said of a database that cannot be used, and how to mend it.

import { faultOfMemory, MemoryError, type MemoryFault } from '../memory-error.ts'
import { type MemoryPlace, memoryFile } from './connect.ts'

const mending: Readonly<Record<Exclude<MemoryFault, 'newer'>, string>> = {
  away: 'cannot be reached. See that its server runs, and that DATABASE_URL names it',
  locked: 'is locked by another program. End that one, then start again',
  full: 'has no room left on its disk. Make room, then start again',
  'read-only': 'can only be read. Give the program the right to write there',
  closed: 'cannot be opened. See that it is there and that the program may write to it',
  broken: 'is damaged. Move it away and restore a backup: npm run restore -- <file>',
}

/** The error in one line that names the place, never its password; as it is where it is a fault of ours. */
export function asMemoryError(error: unknown, { dataFolder, databaseUrl }: MemoryPlace): unknown {
  const fault = faultOfMemory(error)
  if (fault === undefined || error instanceof MemoryError) return error
  const where = databaseUrl ? 'memory (DATABASE_URL)' : `memory ${memoryFile(dataFolder)} (CHARGEHAND_DATA)`
  const said = (error as Error).message.replace(/\s+/g, ' ').replace(/\.$/, '')
  return new MemoryError(`The ${where} ${mending[fault as keyof typeof mending]}: ${said}.`, fault)
}
