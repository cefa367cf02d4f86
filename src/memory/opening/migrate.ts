// Brings a database to the schema of this program, and refuses one that a newer program has written.

import { sql } from 'kysely'
import { DEFAULT_MIGRATION_TABLE, type Migration, Migrator } from 'kysely/migration'
import type { Database } from '../database.ts'
import { MemoryError } from '../memory-error.ts'

/** All changes or, where one fails, none. Throws a MemoryError where the database is newer than `known`. */
export async function migrate(db: Database, known: Readonly<Record<string, Migration>>): Promise<void> {
  await refuseNewer(db, Object.keys(known))
  const migrator = new Migrator({ db, provider: { getMigrations: async () => ({ ...known }) } })
  const { error } = await migrator.migrateToLatest()
  if (error) throw error
}

/** The names of the changes that the database has seen, in their order. */
export async function migrationsDone(db: Database): Promise<readonly string[]> {
  const tables = await db.introspection.getTables({ withInternalKyselyTables: true })
  if (!tables.some(({ name }) => name === DEFAULT_MIGRATION_TABLE)) return []
  const table = sql.table(DEFAULT_MIGRATION_TABLE)
  const { rows } = await sql<{ name: string }>`select name from ${table} order by name`.execute(db)
  return rows.map(({ name }) => name)
}

async function refuseNewer(db: Database, known: readonly string[]): Promise<void> {
  const unknown = (await migrationsDone(db)).filter(name => !known.includes(name))
  if (unknown.length === 0) return
  throw new MemoryError(
    `The memory was written by a newer version of this program (it has ${unknown.join(', ')}). ` +
      'Run that version or a later one, or restore an older backup.',
    'newer',
  )
}
