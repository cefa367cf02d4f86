// Where the memory is kept: PostgreSQL where a URL says so, else SQLite in the data folder.

import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { Kysely } from 'kysely'
import type { Database, Tables } from '../database.ts'
import { MemoryError } from '../memory-error.ts'
import { postgresDialect } from './postgres.ts'
import { sqliteDialect } from './sqlite.ts'

export interface MemoryPlace {
  /** Holds the SQLite file; made where it is missing. ':memory:' keeps nothing after it is closed. */
  readonly dataFolder: string
  readonly databaseUrl?: string | undefined
}

/** The SQLite file in the data folder. */
export const memoryFile = (dataFolder: string): string => join(dataFolder, 'chargehand.db')

/** The database as it is found, its schema not yet looked at. Throws a MemoryError without a folder to write in. */
export function connect(place: MemoryPlace): Database {
  return new Kysely<Tables>({ dialect: dialectFor(place) })
}

function dialectFor({ dataFolder, databaseUrl }: MemoryPlace) {
  if (databaseUrl) return postgresDialect(databaseUrl)
  if (dataFolder === ':memory:') return sqliteDialect(dataFolder)
  try {
    mkdirSync(dataFolder, { recursive: true })
    return sqliteDialect(memoryFile(dataFolder))
  } catch (error) {
    const { message } = error as Error
    throw new MemoryError(`The data folder "${dataFolder}" (CHARGEHAND_DATA) cannot be used: ${message}`)
  }
}
