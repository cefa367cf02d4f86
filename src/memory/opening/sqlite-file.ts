// Node's own SQLite as Kysely wants it: one file, nothing to install. The thread that writes loads no more than this.

import { DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite'
import type { SqliteDatabase, SqliteStatement } from 'kysely'

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

/** For whoever people wait for: so long it waits for a lock at most. */
export const waitLess = 'pragma busy_timeout = 500'

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
