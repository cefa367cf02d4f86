// Opens the memory: PostgreSQL where a URL says so, else SQLite in the data folder.

import { mkdirSync } from 'node:fs'
import { join } from 'node:path'
import { Kysely } from 'kysely'
import { answeredMemory } from './answered.ts'
import type { Tables } from './database.ts'
import type { Memory } from './memory.ts'
import { migrate } from './migrate.ts'
import { migrations } from './migrations/index.ts'
import { postgresDialect } from './postgres.ts'
import { questionMemory } from './questions.ts'
import { sqliteDialect } from './sqlite.ts'

export interface MemoryPlace {
  /** Holds the SQLite file; made where it is missing. ':memory:' keeps nothing after `close`. */
  readonly dataFolder: string
  readonly databaseUrl?: string | undefined
}

/** The SQLite file inside the data folder. */
export const memoryFile = (dataFolder: string): string => join(dataFolder, 'chargehand.db')

/** Ready to use when the promise resolves. Throws a MemoryError where a newer program wrote the database. */
export async function openMemory(place: MemoryPlace): Promise<Memory> {
  const db = new Kysely<Tables>({ dialect: dialectFor(place) })
  try {
    await migrate(db, migrations)
  } catch (error) {
    await db.destroy()
    throw error
  }
  return {
    questions: questionMemory(db),
    answered: answeredMemory(db),
    close: () => db.destroy(),
  }
}

function dialectFor({ dataFolder, databaseUrl }: MemoryPlace) {
  if (databaseUrl) return postgresDialect(databaseUrl)
  if (dataFolder === ':memory:') return sqliteDialect(dataFolder)
  mkdirSync(dataFolder, { recursive: true })
  return sqliteDialect(memoryFile(dataFolder))
}
