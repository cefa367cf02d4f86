// Where the memory is kept: PostgreSQL where a URL says so, else SQLite in the data folder.

import { join } from 'node:path'
import { Kysely } from 'kysely'
import type { Database, Tables } from '../database.ts'
import { ownersFile, ownersFolder } from './owner-only.ts'
import { type Patience, postgresDialect } from './postgres.ts'
import { sqliteDialect } from './sqlite.ts'
import { apartDialect } from './sqlite-apart.ts'

export interface MemoryPlace {
  /** Holds the SQLite file; made where it is missing. ':memory:' keeps nothing after it is closed. */
  readonly dataFolder: string
  readonly databaseUrl?: string | undefined
}

export const memoryFile = (dataFolder: string): string => join(dataFolder, 'chargehand.db')

/** The database as it is found, its schema not yet looked at. Throws what the system says of a folder or a file. */
export function connect(place: MemoryPlace, patience?: Patience): Database {
  return new Kysely<Tables>({ dialect: dialectFor(place, patience) })
}

function dialectFor({ dataFolder, databaseUrl }: MemoryPlace, patience: Patience | undefined) {
  if (databaseUrl) return postgresDialect(databaseUrl, patience)
  if (dataFolder === ':memory:') return sqliteDialect(dataFolder)
  ownersFolder(dataFolder)
  ownersFile(memoryFile(dataFolder))
  const file = memoryFile(dataFolder)
  return patience ? apartDialect(file) : sqliteDialect(file)
}
