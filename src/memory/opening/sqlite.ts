// Node's own SQLite under Kysely: one file, nothing to install.

import { DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite'
import { SqliteAdapter, type SqliteDatabase, SqliteDialect, type SqliteStatement, sql } from 'kysely'
import type { Database } from '../database.ts'

/**
 * Opens the file, or a database in memory for ':memory:'. Write-ahead log with full synchronisation: a
 * commit has reached the disk before its promise resolves.
 */
export function openSqlite(file: string): SqliteDatabase {
  const database = new DatabaseSync(file, { timeout: 5000 })
  const safely = 'pragma journal_mode = wal; pragma synchronous = full; pragma foreign_keys = on'
  database.exec(`${safely}; pragma secure_delete = on`)
  return adapt(database)
}

/** All in the thread that asks: for a database that is opened, backed up or restored, and for one in memory. */
export const sqliteDialect = (file: string): SqliteDialect => new NodeSqliteDialect({ database: openSqlite(file) })

/** Throws where another program holds the file, it can only be read, or a page of it is damaged. */
export async function readyToWrite(db: Database): Promise<void> {
  await db.connection().execute(async one => {
    await sql`begin immediate`.execute(one)
    await sql`rollback`.execute(one)
    const [found] = (await sql<{ quick_check: string }>`pragma quick_check(1)`.execute(one)).rows
    if (found?.quick_check !== 'ok') throw Object.assign(new Error(found?.quick_check), { errcode: damaged })
    // Versions before the first only let go of what was deleted. The file is written anew once: later it may be large.
    const { rows } = await sql<{ user_version: number }>`pragma user_version`.execute(one)
    if (rows[0]?.user_version === 0) {
      await sql`vacuum`.execute(one)
      await sql`pragma user_version = 1`.execute(one)
    }
  })
}

/** SQLITE_CORRUPT */
const damaged = 11

/** For whoever people wait for: so long it waits for a lock at most. */
export const waitLess = 'pragma busy_timeout = 500'

class NodeSqliteDialect extends SqliteDialect {
  override createAdapter(): SqliteAdapter {
    return new TransactionalAdapter()
  }
}

/** SQLite can undo a change of the schema, whatever Kysely supposes: so migrations are all or nothing. */
export class TransactionalAdapter extends SqliteAdapter {
  override get supportsTransactionalDdl(): boolean {
    return true
  }
}

const mostKept = 200

/** Statements are kept ready: the memory asks the same few again and again. */
function adapt(database: DatabaseSync): SqliteDatabase {
  const ready = new Map<string, SqliteStatement>()
  return {
    close: () => database.close(),
    prepare: query => {
      // A full disk made SQLite undo it already; an error about that would hide why.
      if (query === 'rollback' && !database.isTransaction)
        return adaptStatement(database.prepare('select 1 where false'))
      const statement = ready.get(query) ?? adaptStatement(database.prepare(query))
      if (ready.size >= mostKept) ready.clear()
      ready.set(query, statement)
      return statement
    },
  }
}

function adaptStatement(statement: StatementSync): SqliteStatement {
  const values = (parameters: readonly unknown[]) => parameters as SQLInputValue[]
  return {
    reader: statement.columns().length > 0,
    all: parameters => statement.all(...values(parameters)),
    run: parameters => statement.run(...values(parameters)),
    iterate: parameters => statement.iterate(...values(parameters)),
  }
}
