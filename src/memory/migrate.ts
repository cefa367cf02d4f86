// Brings a database to the schema of this program, and refuses one that a newer program has written.

import { sql } from 'kysely'
import { DEFAULT_MIGRATION_TABLE, type Migration, Migrator } from 'kysely/migration'
import type { Database } from './database.ts'

/** The stored memory cannot be used; the message says why in plain words. */
export class MemoryError extends Error {
  override name = 'MemoryError'
}

/** All changes or, where one fails, none. Throws a MemoryError where the database is newer than `known`. */
export async function migrate(db: Database, known: Readonly<Record<string, Migration>>): Promise<void> {
  await refuseNewer(db, Object.keys(known))
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...known }) } })
  const { error } = await migrator.migrateToLatest()
  if (error) throw error
}

async function refuseNewer(db: Database, known: readonly string[]): Promise<void> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true })
  if (!tables.some(table => table.name === DEFAULT_MIGRATION_TABLE)) return
  const done = await sql<{ name: string }>`select name from ${sql.table(DEFAULT_MIGRATION_TABLE)}`.execute(db)
  const unknown = done.rows.map(row => row.name).filter(name => !known.includes(name))
  if (unknown.length === 0) return
  throw new MemoryError(
    `The memory was written by a newer version of this program (it has ${unknown.join(', ')}). ` +
      'Run that version or a later one, or restore an older backup.',
  )
}
