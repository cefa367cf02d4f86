// A backup: the whole memory as lines of JSON, the same from SQLite and PostgreSQL, to be restored into either.

import { createHash } from 'node:crypto'
import { sql } from 'kysely'
import { type Migration, Migrator } from 'kysely/migration'
import { z } from 'zod'
import type { Database, Tables } from '../database.ts'
import { MemoryError } from '../memory-error.ts'
import { connect } from './connect.ts'
import { migrationsDone } from './migrate.ts'

const headSchema = z.object({ backupOf: z.literal('chargehand memory'), migrations: z.array(z.string()).min(1) })
const rowSchema = z.object({ table: z.string(), row: z.record(z.string(), z.json()) })
/** The checksum is of all lines before it; backups of earlier versions have none. */
const endSchema = z.strictObject({ rows: z.number(), sha256: z.string().optional() })
type TableName = keyof Tables & string
type Migrations = Readonly<Record<string, Migration>>

/** Rows to an insert: far below what either database takes in one statement. */
const batch = 500

/** Every row as of one moment, also while others write. Throws a MemoryError where there is no memory yet. */
export async function backUp(db: Database): Promise<readonly string[]> {
  return db
    .transaction()
    .setIsolationLevel('repeatable read')
    .execute(async snapshot => {
      const migrations = await migrationsDone(snapshot)
      if (migrations.length === 0) throw new MemoryError('There is no memory here to back up.')
      const rows: string[] = []
      for (const { name } of await snapshot.introspection.getTables()) {
        const found = await sql`select * from ${sql.table(name)}`.execute(snapshot)
        for (const row of found.rows) rows.push(JSON.stringify({ table: name, row }))
      }
      const head = JSON.stringify({ backupOf: 'chargehand memory', migrations })
      const lines = [head, ...rows]
      return [...lines, JSON.stringify({ rows: rows.length, sha256: checksumOf(lines) })]
    })
}

const checksumOf = (lines: readonly string[]): string => createHash('sha256').update(lines.join('\n')).digest('hex')

interface Backup {
  readonly migrations: readonly string[]
  readonly rows: readonly z.infer<typeof rowSchema>[]
}

/**
 * Reads a backup and restores it into a database in memory first, so that nothing else is touched before all of it
 * is known to fit. Throws a MemoryError for one that is not whole or does not fit, and one from a newer program.
 */
export async function checkBackup(lines: readonly string[], known: Migrations): Promise<Backup> {
  const backup = readBackup(lines)
  const unknown = backup.migrations.filter(name => !(name in known))
  if (unknown.length > 0) {
    throw new MemoryError(`The backup is from a newer version of this program (it has ${unknown.join(', ')}).`, 'newer')
  }
  const rehearsal = connect({ dataFolder: ':memory:' })
  try {
    await restore(rehearsal, backup, known)
  } catch (error) {
    throw new MemoryError(`The backup does not fit the tables of its version: ${(error as Error).message}.`, 'broken')
  } finally {
    await rehearsal.destroy()
  }
  return backup
}

/**
 * Fills an empty database and brings it to the schema of this program; all or nothing. Returns the number
 * of rows. Throws a MemoryError for a database that is not empty.
 */
export async function restore(db: Database, { migrations, rows }: Backup, known: Migrations): Promise<number> {
  return db.transaction().execute(async transaction => {
    const tables = await transaction.introspection.getTables({ withInternalKyselyTables: true })
    if (tables.length > 0) {
      throw new MemoryError('There is a memory already. Move it away first: a backup is restored into an empty one.')
    }
    const migrator = new Migrator({ db: transaction, provider: { getMigrations: async () => ({ ...known }) } })
    throwFault(await migrator.migrateTo(migrations.at(-1) ?? ''))
    for (const [table, values] of Map.groupBy(rows, row => row.table)) {
      for (let start = 0; start < values.length; start += batch) {
        const records = values.slice(start, start + batch).map(({ row }) => row)
        await transaction
          .insertInto(table as TableName)
          .values(records as never)
          .execute()
      }
    }
    throwFault(await migrator.migrateToLatest())
    return rows.length
  })
}

function readBackup(lines: readonly string[]): Backup {
  try {
    const whole = lines.filter(line => line !== '')
    const [head, ...rest] = whole.map(line => JSON.parse(line))
    const { rows: count, sha256 } = endSchema.parse(rest.pop())
    if (sha256 !== undefined && sha256 !== checksumOf(whole.slice(0, -1))) throw new Error('another checksum')
    const rows = z.array(rowSchema).length(count).parse(rest)
    return { ...headSchema.parse(head), rows }
  } catch {
    throw new MemoryError('This is not a whole backup of the memory.', 'broken')
  }
}

function throwFault({ error }: { readonly error?: unknown }): void {
  if (error) throw error
}
